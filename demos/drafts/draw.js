// Draws every pattern of the demos that is drafted by figures: node demos/drafts/draw.js
import { writeFileSync } from 'node:fs';
import { dartedDress } from './darted-dress.js';
import { shirt } from './shirt.js';
import { smock } from './smock.js';
import { trousers } from './trousers.js';
import { waistcoat } from './waistcoat.js';
import { yokeSkirt } from './yoke-skirt.js';

const drafts = { 'darted-dress': dartedDress, shirt, smock, trousers, waistcoat, 'yoke-skirt': yokeSkirt };
for (const [name, draft] of Object.entries(drafts))
  writeFileSync(new URL(`../patterns/${name}.svg`, import.meta.url), draft());

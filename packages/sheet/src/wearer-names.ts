/** What may be known of the wearer. Terms of ISO 8559-1, with and without their hyphens, and a few of the trade. */
export const measurementNames = [
  'head girth',
  'neck girth',
  'neck base girth',
  'bust girth',
  'chest girth',
  'under-bust girth',
  'under bust girth',
  'waist girth',
  'abdomen girth',
  'top hip girth',
  'high hip girth',
  'hip girth',
  'seat girth',
  'upper-arm girth',
  'upper arm girth',
  'elbow girth',
  'wrist girth',
  'hand girth',
  'armscye girth',
  'trunk circumference',
  'thigh girth',
  'mid-thigh girth',
  'mid thigh girth',
  'knee girth',
  'calf girth',
  'ankle girth',
  'heel girth',
  'shoulder length',
  'across-back shoulder width',
  'back neck point to waist',
  'back neck point to wrist',
  'back waist length',
  'front waist length',
  'outer arm length',
  'scye depth',
  'neck shoulder point to breast point',
  'body rise',
  'waist to hips',
  'stature',
  'cervical height',
  'waist height',
  'hip height',
  'knee height',
] as const;

/** Whether a text is the name of a measurement, hyphens and spaces alike. */
export const isMeasurement = (text: string): boolean => {
  const plain = (name: string): string =>
    name
      .trim()
      .toLowerCase()
      .replace(/[-\s]+/g, ' ');
  return measurementNames.some(name => plain(name) === plain(text));
};

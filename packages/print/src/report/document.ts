/** A written document without a look: the cover of the pages and the report are two settings of it. */
export interface WrittenDocument {
  readonly title: string;
  /** Short facts under the title. */
  readonly facts: readonly string[];
  readonly sections: readonly Section[];
}

export interface Section {
  readonly id: string;
  readonly title: string;
  readonly blocks: readonly Block[];
}

export type Block =
  | { readonly kind: 'text'; readonly text: string }
  | {
      readonly kind: 'table';
      /** What the table is of, for those who hear it. */
      readonly caption: string;
      readonly columns: readonly Column[];
      readonly rows: readonly (readonly string[])[];
    }
  | { readonly kind: 'steps'; readonly items: readonly Item[] }
  | { readonly kind: 'findings'; readonly items: readonly FindingItem[] }
  | { readonly kind: 'cautions'; readonly items: readonly string[] };

export interface Column {
  readonly title: string;
  readonly align: 'left' | 'right';
  /** Share of the width beside the others. */
  readonly share: number;
}
export interface Item {
  readonly text: string;
  readonly detail?: string;
}
export interface FindingItem {
  readonly severity: 'fault' | 'warning' | 'note';
  /** How it weighs and where, in words. */
  readonly heading: string;
  readonly message: string;
  readonly remedy: string;
}

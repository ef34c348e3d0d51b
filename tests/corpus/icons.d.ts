export function icons(): Iterable<{ readonly name: string; readonly source: string }>;
export function pathDataOf(source: string): readonly string[];

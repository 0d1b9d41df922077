/** As much of JSON Schema as the schemas of this project use. */

export interface Schema {
  readonly type?: string | readonly string[];
  readonly enum?: readonly unknown[];
  readonly minimum?: number;
  readonly items?: Schema;
  readonly properties?: Readonly<Record<string, Schema>>;
  readonly required?: readonly string[];
  readonly additionalProperties?: boolean;
}

/** One text for each thing that does not fit. */
export function fits(value: unknown, schema: Schema, at: string): readonly string[] {
  const types = schema.type === undefined ? [] : [schema.type].flat();
  if (types.length > 0 && !types.some((type) => isOf(value, type)))
    return [`${at} is no ${types.join(', ')}`];
  if (schema.enum && !schema.enum.includes(value)) return [`${at} is none of ${schema.enum.join(', ')}`];
  if (schema.minimum !== undefined && typeof value === 'number' && value < schema.minimum)
    return [`${at} is below ${schema.minimum}`];
  if (Array.isArray(value)) return value.flatMap((each, i) => fits(each, schema.items ?? {}, `${at}[${i}]`));
  if (typeof value !== 'object' || value === null) return [];
  return objectFits(new Map(Object.entries(value)), schema, at);
}

function objectFits(value: ReadonlyMap<string, unknown>, schema: Schema, at: string): readonly string[] {
  const known = new Map(Object.entries(schema.properties ?? {}));
  const missing = (schema.required ?? [])
    .filter((name) => !value.has(name))
    .map((name) => `${at} lacks ${name}`);
  const more =
    schema.additionalProperties === false ? [...value.keys()].filter((name) => !known.has(name)) : [];
  return [
    ...missing,
    ...more.map((name) => `${at} has ${name}`),
    ...[...value].flatMap(([name, each]) => fits(each, known.get(name) ?? {}, `${at}.${name}`)),
  ];
}

function isOf(value: unknown, type: string): boolean {
  if (type === 'null') return value === null;
  if (type === 'array') return Array.isArray(value);
  if (type === 'integer') return Number.isInteger(value);
  return type === 'object'
    ? typeof value === 'object' && value !== null && !Array.isArray(value)
    : typeof value === type;
}

/** A workbook written by hand from ECMA-376 (Office Open XML): a stored zip of the least parts, cells in their own place. */
import { crc32 } from "node:zlib";

type Cell = string | number | boolean | Date;

const NS = "http://schemas.openxmlformats.org";

function text(value: string): string {
  return value.replaceAll("&", "&amp;").replaceAll("<", "&lt;");
}

/** A cell at its place; a date by its number of days since 1899-12-30, with the format of dates. */
function cellXml(value: Cell, at: string): string {
  if (typeof value === "boolean") return `<c r="${at}" t="b"><v>${value ? 1 : 0}</v></c>`;
  if (typeof value === "number") return `<c r="${at}"><v>${value}</v></c>`;
  if (typeof value === "string") return `<c r="${at}" t="inlineStr"><is><t>${text(value)}</t></is></c>`;
  return `<c r="${at}" s="1"><v>${(value.getTime() - Date.UTC(1899, 11, 30)) / 86_400_000}</v></c>`;
}

function sheetXml(rows: readonly (readonly Cell[])[]): string {
  const body = rows.map((row, i) => {
    const cells = row.map((value, k) => cellXml(value, `${String.fromCharCode(65 + k)}${i + 1}`));
    return `<row r="${i + 1}">${cells.join("")}</row>`;
  });
  return `<worksheet xmlns="${NS}/spreadsheetml/2006/main"><sheetData>${body.join("")}</sheetData></worksheet>`;
}

/** Files as a zip in which nothing is packed. */
function stored(files: Readonly<Record<string, string>>): Uint8Array {
  const parts: Buffer[] = [];
  const index: Buffer[] = [];
  let at = 0;
  for (const [name, content] of Object.entries(files)) {
    const [path, data] = [Buffer.from(name), Buffer.from(content)];
    const facts = Buffer.alloc(26);
    facts.writeUInt16LE(20, 0);
    facts.writeUInt32LE(crc32(data), 10);
    facts.writeUInt32LE(data.length, 14);
    facts.writeUInt32LE(data.length, 18);
    facts.writeUInt16LE(path.length, 22);
    const part = Buffer.concat([Buffer.from("PK\u0003\u0004"), facts, path, data]);
    const tail = Buffer.alloc(14);
    tail.writeUInt32LE(at, 10);
    index.push(Buffer.concat([Buffer.from("PK\u0001\u0002\u0014\u0000"), facts, tail, path]));
    parts.push(part);
    at += part.length;
  }
  const central = Buffer.concat(index);
  const end = Buffer.alloc(22);
  end.write("PK\u0005\u0006", "latin1");
  end.writeUInt16LE(index.length, 8);
  end.writeUInt16LE(index.length, 10);
  end.writeUInt32LE(central.length, 12);
  end.writeUInt32LE(at, 16);
  return Buffer.concat([...parts, central, end]);
}

/** The bytes of a workbook with these sheets. */
export function workbook(sheets: Readonly<Record<string, readonly (readonly Cell[])[]>>): Uint8Array {
  const names = Object.keys(sheets);
  const office = `${NS}/officeDocument/2006/relationships`;
  const relation = (id: string, kind: string, target: string): string =>
    `<Relationship Id="${id}" Type="${office}/${kind}" Target="${target}"/>`;
  const relations = (all: string): string =>
    `<Relationships xmlns="${NS}/package/2006/relationships">${all}</Relationships>`;
  const part = (name: string, kind: string): string =>
    `<Override PartName="/xl/${name}.xml" ContentType="application/vnd.openxmlformats-officedocument.spreadsheetml.${kind}+xml"/>`;
  return stored({
    "[Content_Types].xml": `<Types xmlns="${NS}/package/2006/content-types"><Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/>${part("workbook", "sheet.main")}${part("styles", "styles")}${names.map((_, i) => part(`worksheets/sheet${i + 1}`, "worksheet")).join("")}</Types>`,
    "_rels/.rels": relations(relation("r1", "officeDocument", "xl/workbook.xml")),
    "xl/workbook.xml": `<workbook xmlns="${NS}/spreadsheetml/2006/main" xmlns:r="${office}"><sheets>${names.map((name, i) => `<sheet name="${name}" sheetId="${i + 1}" r:id="r${i + 1}"/>`).join("")}</sheets></workbook>`,
    "xl/_rels/workbook.xml.rels": relations(
      names.map((_, i) => relation(`r${i + 1}`, "worksheet", `worksheets/sheet${i + 1}.xml`)).join("") +
        relation("s", "styles", "styles.xml"),
    ),
    "xl/styles.xml": `<styleSheet xmlns="${NS}/spreadsheetml/2006/main"><fonts count="1"><font/></fonts><fills count="1"><fill/></fills><borders count="1"><border/></borders><cellStyleXfs count="1"><xf/></cellStyleXfs><cellXfs count="2"><xf numFmtId="0"/><xf numFmtId="14" applyNumberFormat="1"/></cellXfs></styleSheet>`,
    ...Object.fromEntries(names.map((name, i) => [`xl/worksheets/sheet${i + 1}.xml`, sheetXml(sheets[name] ?? [])])),
  });
}

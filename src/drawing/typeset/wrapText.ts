import { measureTextWidth, type Weight } from './textWidth';

/** How a text is set: letter height and the width of its column, both in paper mm. */
export interface Column {
  size: number;
  width: number;
  weight?: Weight;
  /** The most lines; what is left over ends in an ellipsis. */
  maxLines?: number;
}

/** Breaks a text into lines that fit the column, at spaces; a word too long for a line is cut. */
export function wrapText(text: string, column: Column): string[] {
  const lines: string[] = [];
  for (const word of text.split(/[ \n]+/).filter((part) => part !== '')) addWord(lines, word, column);
  const { maxLines = Number.POSITIVE_INFINITY } = column;
  if (lines.length <= maxLines) return lines;
  const last = lines.slice(maxLines - 1).join(' ');
  return [...lines.slice(0, maxLines - 1), elideText(last, column)];
}

/** The text itself when it fits the column's width, otherwise its beginning and an ellipsis. */
export function elideText(text: string, column: Column): string {
  if (fits(text, column)) return text;
  const letters = [...text];
  while (letters.length > 0 && !fits(`${letters.join('').trimEnd()}…`, column)) letters.pop();
  return `${letters.join('').trimEnd()}…`;
}

const fits = (text: string, { size, width, weight }: Column) => measureTextWidth(text, size, weight) <= width;

function addWord(lines: string[], word: string, column: Column): void {
  const last = lines.at(-1);
  if (last !== undefined && fits(`${last} ${word}`, column)) {
    lines[lines.length - 1] = `${last} ${word}`;
    return;
  }
  lines.push(...cutWord(word, column));
}

/** A word in pieces that each fit a line; most often the word itself. */
function cutWord(word: string, column: Column): string[] {
  const pieces = [''];
  for (const letter of word) {
    const piece = pieces.at(-1) ?? '';
    if (piece === '' || fits(piece + letter, column)) pieces[pieces.length - 1] = piece + letter;
    else pieces.push(letter);
  }
  return pieces;
}

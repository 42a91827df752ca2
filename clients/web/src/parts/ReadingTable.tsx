// Readings against their bands: a picture in each row, and its figures beside it.
import { Reading_Standing, type Band, type Reading } from "contract/reading_pb";
import { readingWords, tellsSomething } from "../words/figures";

const width = 240;
const height = 22;
/** Every band takes the middle half, so that a column of pictures is read at a glance. */
const [bandStart, bandEnd] = [width / 4, (width * 3) / 4];

export function ReadingTable(props: { readings: readonly Reading[]; caption: string; withRange?: boolean }) {
  const shown = props.readings.filter(tellsSomething);
  return (
    <div class="wide">
      <table class="readings">
        <caption>{props.caption}</caption>
        <thead>
          <tr>
            <th scope="col">Reading</th>
            <th scope="col">Picture</th>
            <th scope="col" class="figure">Value</th>
            <th scope="col" class="figure">Band</th>
            <th scope="col">Stands</th>
          </tr>
        </thead>
        <tbody>
          {shown.map((reading) => (
            <ReadingRow key={reading.balance} reading={reading} />
          ))}
        </tbody>
      </table>
      <p class="key">The bar is the band, the dot the value, and the thin line where it may lie as ingredients vary. A triangle is a value outside its band.</p>
    </div>
  );
}

function ReadingRow({ reading }: { reading: Reading }) {
  const words = readingWords(reading);
  const isOutside = words.standing.startsWith("too");
  return (
    <tr class={isOutside ? "outside" : undefined} data-balance={reading.balance} data-value={reading.value}>
      <th scope="row">
        {reading.title} {reading.unit && <small>{reading.unit}</small>}
      </th>
      <td class="picture">{reading.band && <ReadingPicture reading={reading} band={reading.band} />}</td>
      <td class="figure">
        {words.value}
        {words.range && <small>{words.range}</small>}
      </td>
      <td class="figure">{words.band}</td>
      <td>
        {words.standing}
        {isOutside && reading.meaning && <small class="meaning">{reading.meaning}</small>}
      </td>
    </tr>
  );
}

function ReadingPicture({ reading, band }: { reading: Reading; band: Band }) {
  const words = readingWords(reading);
  const [start, end] = [band.low === undefined ? 0 : bandStart, band.high === undefined ? width : bandEnd];
  const place = placeIn(band);
  const at = honest(place(reading.value), reading.standing);
  return (
    <svg viewBox={`0 0 ${width} ${height}`} class="bar" role="img" aria-label={`${reading.title} ${words.value}, band ${words.band}, ${words.standing}`}>
      <line class="ground" x1="0" x2={width} y1={height / 2} y2={height / 2} />
      <rect class="band" x={start} width={end - start} y="5" height={height - 10} />
      {band.low !== undefined && <line class="end" x1={start} x2={start} y1="2" y2={height - 2} />}
      {band.high !== undefined && <line class="end" x1={end} x2={end} y1="2" y2={height - 2} />}
      {reading.low !== reading.high && <line class="spread" x1={place(reading.low)} x2={place(reading.high)} y1={height / 2} y2={height / 2} />}
      {reading.standing === Reading_Standing.INSIDE ? (
        <circle class="value" cx={at} cy={height / 2} r="5" />
      ) : (
        <path class="value missed" d={`M${at - 7} ${height - 4}h14l-7-14z`} />
      )}
    </svg>
  );
}

/** Where a value is drawn; what lies off the picture is drawn at its end, and the figure beside it says how far. */
function placeIn(band: Band): (value: number) => number {
  const known = band.high ?? band.low ?? 0;
  const open = known === 0 ? 1 : Math.abs(known);
  const [low, high] = [band.low ?? known - open, band.high ?? known + open];
  const scale = high > low ? (bandEnd - bandStart) / (high - low) : 0;
  return (value) => {
    const place = scale === 0 ? width / 2 + Math.sign(value - low) * width : bandStart + (value - low) * scale;
    return Math.min(width - 7, Math.max(7, place));
  };
}

/** A value just outside is never drawn on the end of its band. */
function honest(place: number, standing: Reading_Standing): number {
  return standing === Reading_Standing.BELOW ? Math.min(place, bandStart - 9) : standing === Reading_Standing.ABOVE ? Math.max(place, bandEnd + 9) : place;
}

import { plotColours } from '../output/plot-spec';

const colour = (name: keyof typeof plotColours): string => `var(--plot-${name}, ${plotColours[name]})`;

/** Style of a section: thick visible edges, thin dimension lines, as on a technical drawing (ISO 128). */
export const drawingStyle = `<style>
.motor-section .edge{fill:none;stroke:${colour('ink')};stroke-width:.35;stroke-linejoin:round;stroke-linecap:round}
.motor-section .liner{fill:${colour('line')}}
.motor-section .grain{fill:${colour('first')};fill-opacity:.16}
.motor-section .port{fill:var(--paper, #fff);stroke:${colour('ink')};stroke-width:.25;fill-rule:evenodd}
.motor-section .cone{fill:var(--paper, #fff)}
.motor-section .flaw{fill:${colour('second')};stroke:${colour('second')};stroke-width:.2;fill-rule:evenodd}
.motor-section .screw{fill:var(--paper, #fff);stroke:${colour('ink')};stroke-width:.25}
.motor-section .void{fill:var(--paper, #fff);stroke:${colour('ink')};stroke-width:.25}
.motor-section .seal{fill:${colour('ink')}}
.motor-section .ring{fill:${colour('quiet')};stroke:${colour('ink')};stroke-width:.25}
.motor-section .thread{fill:none;stroke:${colour('ink')};stroke-width:.18;stroke-dasharray:1 .5}
.motor-section .axis{fill:none;stroke:${colour('quiet')};stroke-width:.18;stroke-dasharray:5 1 1 1}
.motor-section .dimension,.motor-section .extension{fill:none;stroke:${colour('quiet')};stroke-width:.18}
.motor-section .extension{stroke-opacity:.7}
.motor-section .arrow{fill:${colour('quiet')}}
.motor-section .leader{fill:none;stroke:${colour('second')};stroke-width:.2}
.motor-section text{font-family:'Source Sans 3','DejaVu Sans',system-ui,sans-serif;font-size:2.6px;fill:${colour('ink')};paint-order:stroke;stroke:var(--paper, #fff);stroke-width:.7}
.motor-section .title{font-size:3.6px;font-weight:600}
.motor-section .quiet{fill:${colour('quiet')}}
.motor-section .mark{fill:${colour('second')};font-weight:600}
</style>`;

const hatch = (id: string, spacing: number, turn: number): string =>
  `<pattern id="hatch-${id}" width="${spacing}" height="${spacing}" patternUnits="userSpaceOnUse" patternTransform="rotate(${turn})"><rect width="${spacing}" height="${spacing}" fill="var(--paper, #fff)"/><path d="M0 0H${spacing}" stroke="${colour('quiet')}" stroke-width=".2"/></pattern>`;

/** Hatching: neighbouring parts differ in direction or spacing (ISO 128-50). */
export const hatchings = `<defs>${hatch('case', 1.3, 45)}${hatch('closure', 1.3, -45)}${hatch('insert', 0.7, 45)}</defs>`;

/**
 * The fill of a hatched part as an attribute: rules of two drawings in one page would share one pattern, and one of them can
 * be hidden.
 */
export const hatchOf = (look: string): string =>
  ['case', 'closure', 'insert'].includes(look) ? ` fill="url(#hatch-${look})"` : '';

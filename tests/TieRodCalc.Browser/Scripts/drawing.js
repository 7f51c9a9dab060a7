// Every part of a picture that says how long it is must be drawn that long: data-length-mm along the picture's own
// horizontal, times data-scale (millimeters on paper for one of the rod), measured on paper.
() => {
  const tolerance = 0.1;
  const horizontal = part => {
    const box = part.getBBox();
    const matrix = part.getScreenCTM();
    const ends = [box.x, box.x + box.width].map(x => new DOMPoint(x, box.y + box.height / 2).matrixTransform(matrix));
    return Math.hypot(ends[1].x - ends[0].x, ends[1].y - ends[0].y) * 25.4 / 96;
  };
  const scaled = [...document.querySelectorAll('svg[data-scale]')];
  const parts = scaled.flatMap(svg => [...svg.querySelectorAll('[data-length-mm]')].map(part => ({ svg, part })));
  return [{
    check: 'drawn to scale',
    problems: [
      ...sections.filter(section => !section.querySelector('svg[data-scale] [data-length-mm]'))
        .map(section => `${place(section)}: nothing in it says how long it is`),
      ...parts.flatMap(({ svg, part }) => {
        const wanted = Number(part.dataset.lengthMm) * Number(svg.dataset.scale);
        const drawn = horizontal(part);
        return Math.abs(drawn - wanted) <= tolerance ? []
          : [`${place(part)}: ${part.dataset.name ?? described(part)}: drawn ${drawn.toFixed(2)} mm, should be ${wanted.toFixed(2)} mm`];
      }),
    ],
  }];
}

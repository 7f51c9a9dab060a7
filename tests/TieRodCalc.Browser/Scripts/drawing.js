// Every dimension of a picture says how long it is and must be drawn that long: data-length-mm along its line, times the
// picture's data-scale (millimeters on paper for one of the rod), measured on paper. What is drawn black as engaged thread is
// measured too; the plan says how long it has to be.
() => {
  const tolerance = 0.1;
  const onPaper = line => {
    const box = line.getBBox();
    const matrix = line.getScreenCTM();
    const ends = [box.x, box.x + box.width].map(x => new DOMPoint(x, box.y + box.height / 2).matrixTransform(matrix));
    return Math.hypot(ends[1].x - ends[0].x, ends[1].y - ends[0].y) * 25.4 / 96;
  };
  const scale = part => Number(part.closest('[data-scale]')?.dataset.scale);

  // Arrowheads may stand outside a short dimension: its line comes first.
  const dimensions = section => [...section.querySelectorAll('svg [data-length-mm]')]
    .map(part => ({ part, drawn: onPaper(part.matches('g') ? part.firstElementChild : part) }));

  // A label on a white ground may cover the middle of a line, but the ends show what is measured.
  const hidden = part => {
    const line = part.matches('g') ? part.firstElementChild : part;
    const box = line.getBBox();
    const later = [...part.ownerSVGElement.querySelectorAll('path, rect, circle, polygon')].filter(shape => shown(shape)
      && !part.contains(shape) && part.compareDocumentPosition(shape) & Node.DOCUMENT_POSITION_FOLLOWING
      && getComputedStyle(shape).fill !== 'none');
    return [0.02, 0.98].some(at => {
      const point = new DOMPoint(box.x + at * box.width, box.y + box.height / 2).matrixTransform(line.getScreenCTM());
      return later.some(shape => shape.isPointInFill(point.matrixTransform(shape.getScreenCTM().inverse())));
    });
  };
  return {
    hidden: sections.flatMap(section => dimensions(section).filter(({ part }) => hidden(part))
      .map(({ part }) => `${place(part)}: ${part.dataset.name} is hidden by what is drawn after it`)),
    problems: sections.flatMap(section => dimensions(section).flatMap(({ part, drawn }) => {
      const wanted = Number(part.dataset.lengthMm) * scale(part);
      return Math.abs(drawn - wanted) <= tolerance ? []
        : [`${place(part)}: ${part.dataset.name ?? described(part)}: drawn ${drawn.toFixed(2)} mm, should be ${wanted.toFixed(2)} mm`];
    })),
    sections: sections.map(section => ({
      place: place(section),
      dimensions: dimensions(section).map(({ part }) => ({ name: part.dataset.name ?? '', mm: Number(part.dataset.lengthMm) })),
      // Where an end is bent out of the paper, what is not to scale says so.
      shortened: [...section.querySelectorAll('svg [data-name]:not([data-length-mm])')]
        .filter(part => /seen shortened/.test(part.closest('svg').textContent)).map(part => part.dataset.name),
      engaged: [...section.querySelectorAll('svg .engaged')].map(part => ({ drawn: onPaper(part), scale: scale(part) })),
    })),
  };
}

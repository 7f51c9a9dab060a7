// How many sections there are, what stands in them, and the margins that the page asks for, in millimeters.
() => {
  const millimeters = value => {
    const parts = (value ?? '').match(/^([\d.]+)(mm|cm|in|pt|px|pc)?$/);
    const units = { mm: 1, cm: 10, in: 25.4, pt: 25.4 / 72, pc: 25.4 / 6, px: 25.4 / 96 };
    return parts ? Number(parts[1]) * (units[parts[2] ?? 'px'] ?? 0) : null;
  };
  // What the browser takes where the page says nothing.
  const margin = { top: 10, right: 10, bottom: 10, left: 10 };
  const read = rules => {
    for (const rule of rules) {
      if (rule.constructor.name === 'CSSPageRule' && !rule.selectorText) {
        for (const side of Object.keys(margin)) {
          margin[side] = millimeters(rule.style.getPropertyValue('margin-' + side)) ?? margin[side];
        }
      } else if (rule.cssRules) {
        read(rule.cssRules);
      }
    }
  };
  for (const sheet of document.styleSheets) {
    try { read(sheet.cssRules); } catch { /* A sheet from elsewhere; another check reports it. */ }
  }
  return {
    margin,
    sections: sections.map(section => ({
      place: place(section), heading: words(section.querySelector('h2')?.textContent), text: seen(section),
    })),
  };
}

// The page laid out for paper: {width, height} of what can be printed, in pixels.
page => {
  const tolerance = 1;
  const smallest = 7.5;
  const found = {};
  const check = (name, problems) => { found[name] = [...problems]; };
  const canvas = document.createElement('canvas').getContext('2d');

  const corners = (left, top, right, bottom) =>
    [{ x: left, y: top }, { x: right, y: top }, { x: right, y: bottom }, { x: left, y: bottom }];
  const bounds = quad => ({
    left: Math.min(...quad.map(p => p.x)), right: Math.max(...quad.map(p => p.x)),
    top: Math.min(...quad.map(p => p.y)), bottom: Math.max(...quad.map(p => p.y)),
  });

  // How much of a line's height its letters leave free, above and below, as parts of it.
  const free = (text, style) => {
    canvas.font = `${style.fontStyle} ${style.fontWeight} 100px ${style.fontFamily}`;
    const ink = canvas.measureText(style.textTransform === 'uppercase' ? text.toUpperCase() : text);
    const line = ink.fontBoundingBoxAscent + ink.fontBoundingBoxDescent;
    return {
      above: Math.max(0, (ink.fontBoundingBoxAscent - ink.actualBoundingBoxAscent) / line),
      below: Math.max(0, (ink.fontBoundingBoxDescent - ink.actualBoundingBoxDescent) / line),
    };
  };

  // The boxes of the letters of a text, in pixels; turned ones stay turned.
  const quads = (node, element, style) => {
    const { above, below } = free(node.data, style);
    const cut = r => corners(r.left, r.top + above * r.height, r.right, r.bottom - below * r.height);
    const matrix = element.getScreenCTM?.();
    if (matrix && (matrix.b !== 0 || matrix.c !== 0) && element.getNumberOfChars && element.childNodes.length === 1) {
      const boxes = Array.from({ length: element.getNumberOfChars() }, (_, i) => element.getExtentOfChar(i));
      const all = bounds(boxes.flatMap(b => corners(b.x, b.y, b.x + b.width, b.y + b.height)));
      return [cut({ ...all, height: all.bottom - all.top }).map(p => new DOMPoint(p.x, p.y).matrixTransform(matrix))];
    }
    const range = document.createRange();
    range.selectNodeContents(node);
    return [...range.getClientRects()].filter(r => r.width > 0 && r.height > 0).map(cut);
  };

  const texts = sections.flatMap(section => {
    const walker = document.createTreeWalker(section, NodeFilter.SHOW_TEXT);
    const nodes = [];
    while (walker.nextNode()) nodes.push(walker.currentNode);
    return nodes.filter(node => words(node.data) && shown(node.parentElement)).map(node => {
      const element = node.parentElement;
      const style = getComputedStyle(element);
      return { section, node, element, style, text: short(node.data), quads: quads(node, element, style) };
    });
  });

  const depth = (a, b) => {
    const axes = [a, b].flatMap(quad => [0, 1].map(i => {
      const [dx, dy] = [quad[i + 1].x - quad[i].x, quad[i + 1].y - quad[i].y];
      const length = Math.hypot(dx, dy) || 1;
      return { x: -dy / length, y: dx / length };
    }));
    return Math.min(...axes.map(axis => {
      const [p, q] = [a, b].map(quad => quad.map(point => point.x * axis.x + point.y * axis.y));
      return Math.min(Math.max(...p), Math.max(...q)) - Math.max(Math.min(...p), Math.min(...q));
    }));
  };

  const size = ({ element, style }) => {
    const matrix = inSvg(element) ? element.getScreenCTM() : null;
    const scale = matrix ? Math.sqrt(Math.abs(matrix.a * matrix.d - matrix.b * matrix.c)) : 1;
    return parseFloat(style.fontSize) * scale * 0.75;
  };

  // Every section stands on one page, with what stands before the first and after the last of them.
  const reach = section => Math.max(section.getBoundingClientRect().bottom,
    ...[...section.querySelectorAll('*')].filter(e => shown(e) && !e.ownerSVGElement).map(e => e.getBoundingClientRect().bottom));
  check('fits the page', [
    ...(sections.length ? [] : ['there is no section']),
    ...sections.flatMap((section, i) => {
      const top = i === 0 ? 0 : section.getBoundingClientRect().top + scrollY;
      const end = i === sections.length - 1 ? Math.max(reach(section) + scrollY, document.body.getBoundingClientRect().bottom + scrollY)
        : reach(section) + scrollY;
      return end - top > page.height + tolerance
        ? [`${place(section)}: ${((end - top) * 25.4 / 96).toFixed(1)} mm high, ${(page.height * 25.4 / 96).toFixed(1)} mm can be printed`]
        : [];
    }),
    ...[...document.body.querySelectorAll('*')].filter(e => shown(e) && !e.ownerSVGElement).flatMap(element => {
      const box = element.getBoundingClientRect();
      return box.width > 0 && (box.right > page.width + tolerance || box.left < -tolerance)
        ? [`${place(element)}: ${described(element)} reaches from ${box.left.toFixed(0)} to ${box.right.toFixed(0)} px of ` +
          `${page.width}: ${short(element.textContent)}`]
        : [];
    })]);

  const pieces = texts.flatMap(text => text.quads.map(quad => ({ ...text, quad, box: bounds(quad) })));
  const near = (a, b) => a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;
  const pictures = sections.flatMap(section => [...section.querySelectorAll('svg')].filter(svg => !svg.ownerSVGElement && shown(svg)));
  check('texts apart', [
    ...(texts.length ? [] : ['there is no text']),
    ...pieces.flatMap((a, i) => pieces.slice(i + 1)
      .filter(b => a.section === b.section && near(a.box, b.box) && depth(a.quad, b.quad) > tolerance)
      .map(b => `${place(a.element)}: "${a.text}" and "${b.text}"`)),
    ...pictures.flatMap(svg => pieces.filter(piece => !inSvg(piece.element) && !svg.closest('p, td, li, label, span'))
      .filter(piece => depth(piece.quad, corners(...(r => [r.left, r.top, r.right, r.bottom])(svg.getBoundingClientRect()))) > tolerance)
      .map(piece => `${place(svg)}: "${piece.text}" and the picture`)),
  ]);

  // What an ancestor that hides its overflow shows: the outermost first, a picture by its own box.
  const outside = (box, element) => {
    for (let each = element; each; each = each.parentElement) {
      const style = getComputedStyle(each);
      if (each.tagName.toLowerCase() !== 'svg' && (inSvg(each) || (style.overflowX === 'visible' && style.overflowY === 'visible'))) {
        continue;
      }
      const frame = each.getBoundingClientRect();
      const out = Math.max(frame.left - box.left, box.right - frame.right, frame.top - box.top, box.bottom - frame.bottom);
      if (out > tolerance) return `${out.toFixed(1)} px beyond ${described(each)}`;
    }
    return null;
  };
  const clipped = element => {
    for (let each = element; each; each = each.parentElement) {
      if (getComputedStyle(each).clipPath !== 'none') return true;
    }
    return false;
  };
  const leavesInk = shape => ['fill', 'stroke'].some(paint => {
    const color = getComputedStyle(shape)[paint];
    return color.startsWith('url(') || (gray(color) ?? 1) !== 1;
  });
  const shapes = pictures.flatMap(svg => [...svg.querySelectorAll('path, line, rect, circle, ellipse, polygon, polyline, use')])
    .filter(shape => shown(shape) && !clipped(shape) && leavesInk(shape));
  check('nothing cut off', [
    ...pieces.map(piece => ({ piece, out: outside(piece.box, piece.element) })).filter(each => each.out)
      .map(each => `${place(each.piece.element)}: "${each.piece.text}" ${each.out}`),
    ...shapes.map(shape => ({ shape, out: outside(shape.getBoundingClientRect(), shape) })).filter(each => each.out)
      .map(each => `${place(each.shape)}: ${described(each.shape)} ${each.out}`),
  ]);

  // A word may go on in the next line after a hyphen; one that is longer than a column has to, and some scripts have no blanks.
  const longest = 25;
  check('words whole', texts.filter(({ element }) => !inSvg(element)).flatMap(({ node, element }) =>
    [...node.data.matchAll(/[\p{Script=Latin}\p{N}.,]+/gu)].filter(word => word[0].length <= longest).filter(word => {
      const range = document.createRange();
      range.setStart(node, word.index);
      range.setEnd(node, word.index + word[0].length);
      const lines = [...range.getClientRects()].filter(r => r.width > 0);
      return lines.some(line => line.top > lines[0].top + lines[0].height / 2);
    }).map(word => `${place(element)}: "${word[0]}" in "${short(node.data)}"`)));

  check('letters large enough', texts.filter(text => size(text) < smallest - 0.01)
    .map(text => `${place(text.element)}: ${size(text).toFixed(2)} pt: "${text.text}"`));

  // Backgrounds are not printed: paper is white, but for what a picture has drawn below the text.
  const below = (text, quad) => {
    const middle = new DOMPoint((quad[0].x + quad[2].x) / 2, (quad[0].y + quad[2].y) / 2);
    const svg = text.element.closest('svg');
    if (!svg) return 1;
    if (text.style.paintOrder.startsWith('stroke') && typeof gray(text.style.stroke) === 'number') return gray(text.style.stroke);
    const under = [...svg.querySelectorAll('path, rect, circle, ellipse, polygon')].filter(shape => shown(shape)
      && shape.compareDocumentPosition(text.element) & Node.DOCUMENT_POSITION_FOLLOWING
      && getComputedStyle(shape).fill !== 'none'
      && shape.isPointInFill(middle.matrixTransform(shape.getScreenCTM().inverse())));
    if (under.length === 0) return 1;
    const style = getComputedStyle(under.at(-1));
    return style.fill.startsWith('url(') ? 'pattern' : gray(style.fill, style.fillOpacity) ?? 1;
  };
  check('contrast of texts', texts.flatMap(text => text.quads.flatMap(quad => {
    const svg = inSvg(text.element);
    const color = svg ? gray(text.style.fill, text.style.fillOpacity, text.style.opacity) : gray(text.style.color, text.style.opacity);
    const ground = below(text, quad);
    if (ground === 'pattern') return [`${place(text.element)}: on a hatched area: "${text.text}"`];
    const enough = typeof color === 'number' && typeof ground === 'number' && contrast(color, ground) >= 4.5;
    return enough ? [] : [`${place(text.element)}: ${svg ? text.style.fill : text.style.color}: "${text.text}"`];
  })));

  check('black and white', [...document.body.querySelectorAll('*')].filter(shown).flatMap(element => {
    const style = getComputedStyle(element);
    const edges = ['Top', 'Right', 'Bottom', 'Left'].filter(side => parseFloat(style[`border${side}Width`]) > 0)
      .map(side => gray(style[`border${side}Color`]));
    const svg = inSvg(element);
    const lines = svg ? [gray(style.stroke, style.strokeOpacity, style.opacity)] : edges;
    const areas = svg ? [gray(style.fill, style.fillOpacity)] : [gray(style.color), gray(style.backgroundColor)];
    return [
      [...lines, ...areas].includes('hue') ? 'a color that is no gray' : null,
      lines.some(line => typeof line === 'number' && line < 1 && contrast(line, 1) < 3) ? 'a line too pale to print' : null,
    ].filter(Boolean).map(problem => `${place(element)}: ${described(element)}: ${problem}: ${short(element.textContent)}`);
  }));

  return Object.entries(found).map(([name, problems]) => ({ check: name, problems: [...new Set(problems)] }));
}

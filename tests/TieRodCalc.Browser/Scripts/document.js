// The document itself: nothing from elsewhere, and what a screen reader needs.
() => {
  const all = [...document.querySelectorAll('*')];
  const found = {};
  const check = (name, problems) => { found[name] = [...problems]; };

  check('standard HTML', [
    document.doctype ? null : 'no doctype',
    document.compatMode === 'CSS1Compat' ? null : 'quirks mode',
    document.characterSet === 'UTF-8' && document.querySelector('meta[charset]') ? null : 'the encoding is not said to be UTF-8',
  ].filter(Boolean));

  check('no script', all.flatMap(element => [
    element.tagName.toLowerCase() === 'script' ? `${place(element)}: a script element` : null,
    ...[...element.attributes]
      .filter(attribute => attribute.name.startsWith('on') || /^\s*javascript:/i.test(attribute.value))
      .map(attribute => `${place(element)}: ${described(element)} has ${attribute.name}`),
  ]).filter(Boolean));

  // A reference may point into the file itself only: #id.
  const references = ['src', 'srcset', 'href', 'xlink:href', 'data', 'poster', 'action', 'background', 'cite', 'ping'];
  const foreign = text => [...text.matchAll(/url\(\s*["']?([^"')]*)/g)].map(match => match[1]).filter(url => !url.startsWith('#'));
  check('no reference out of the file', all.flatMap(element => [
    ...references
      .filter(name => element.hasAttribute(name) && !element.getAttribute(name).startsWith('#'))
      .map(name => `${place(element)}: ${described(element)} has ${name}="${short(element.getAttribute(name))}"`),
    ...[...element.attributes].flatMap(attribute => foreign(attribute.value))
      .map(url => `${place(element)}: ${described(element)} refers to ${short(url)}`),
    ...(element.tagName.toLowerCase() === 'style'
      ? [...foreign(element.textContent), ...(element.textContent.match(/@import[^;]*/g) ?? [])]
      : []).map(url => `a style refers to ${short(url)}`),
    /^(link|base|iframe|object|embed|img|image|video|audio|feimage)$/i.test(element.tagName) || element.httpEquiv === 'refresh'
      ? `${place(element)}: ${described(element)}` : null,
  ]).filter(Boolean));

  check('language and title', [
    words(document.documentElement.lang) ? null : 'html has no lang',
    words(document.title) ? null : 'no title',
  ].filter(Boolean));

  const headings = [...document.querySelectorAll('h1, h2, h3, h4, h5, h6')];
  const level = heading => Number(heading.tagName[1]);
  check('headings', [
    ...(headings.filter(heading => level(heading) === 1).length === 1 ? [] : ['not exactly one h1']),
    ...headings.filter(heading => !words(heading.textContent)).map(heading => `${place(heading)}: an empty ${described(heading)}`),
    ...headings.filter((heading, i) => level(heading) > (i === 0 ? 0 : level(headings[i - 1])) + 1)
      .map(heading => `${place(heading)}: ${described(heading)} jumps: ${short(heading.textContent)}`),
    ...sections.filter(section => !section.querySelector('h1, h2, h3')).map(section => `${place(section)}: no heading`),
  ]);

  // A picture has a name and a description: its title comes first, or aria-labelledby names it.
  const pictures = [...document.querySelectorAll('svg')].filter(svg => !svg.ownerSVGElement);
  check('pictures described', [
    ...sections.filter(section => !section.querySelector('svg')).map(section => `${place(section)}: no picture`),
    ...pictures.flatMap(svg => {
      const [title, description] = ['title', 'desc'].map(name => svg.querySelector(':scope > ' + name));
      const labels = (svg.getAttribute('aria-labelledby') ?? '').split(/\s+/).filter(Boolean);
      return [
        svg.getAttribute('role') === 'img' ? null : 'no role=img',
        words(title?.textContent) ? null : 'no title',
        words(description?.textContent) ? null : 'no desc',
        svg.firstElementChild === title || labels.includes(title?.id) ? null : 'its title names it not',
      ].filter(Boolean).map(problem => `${place(svg)}: ${described(svg)}: ${problem}`);
    })]);

  const tables = [...document.querySelectorAll('table')];
  check('tables', [
    ...tables.filter(table => !table.querySelector('th')).map(table => `${place(table)}: ${described(table)} has no th`),
    ...[...document.querySelectorAll('th')].filter(head => !/^(row|col|rowgroup|colgroup)$/.test(head.getAttribute('scope') ?? ''))
      .map(head => `${place(head)}: th without scope: ${short(head.textContent)}`),
  ]);

  // A box to tick or a line to write on says beside it what it is for.
  const blanks = [...document.querySelectorAll('input, .box, .blank, .line')].filter(element => !inSvg(element) && shown(element));
  check('boxes and lines named', blanks
    .filter(blank => !words((blank.closest('li, tr, p, label, dd, div') ?? blank.parentElement).textContent))
    .map(blank => `${place(blank)}: ${described(blank)} has no text beside it`));

  const ids = all.map(element => element.id).filter(Boolean);
  const known = new Set(ids);
  const pointed = element => [
    ...['aria-labelledby', 'aria-describedby', 'for', 'headers'].flatMap(name => (element.getAttribute(name) ?? '').split(/\s+/)),
    ...[...element.attributes].flatMap(attribute => [...attribute.value.matchAll(/url\(\s*["']?#([^"')]*)/g)].map(match => match[1])),
    ...['href', 'xlink:href'].map(name => element.getAttribute(name) ?? '')
      .filter(value => value.startsWith('#')).map(value => value.slice(1)),
  ].filter(Boolean);
  check('ids', [
    ...[...known].filter(id => ids.indexOf(id) !== ids.lastIndexOf(id)).map(id => `${id} is there more than once`),
    ...all.flatMap(element => pointed(element).filter(id => !known.has(id))
      .map(id => `${place(element)}: ${described(element)} points to ${id}, which is not there`)),
  ]);

  return Object.entries(found).map(([name, problems]) => ({ check: name, problems }));
}

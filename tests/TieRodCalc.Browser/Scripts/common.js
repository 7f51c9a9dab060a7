// What the other scripts share. Each of them is one function; what it returns is a list of {check, problems}.
const sections = [...document.querySelectorAll('section.rod')];
const words = text => (text ?? '').replace(/\s+/g, ' ').trim();
const short = text => words(text).length > 60 ? words(text).slice(0, 57) + '...' : words(text);

// The section that an element is in, by its heading.
const place = element => {
  const section = element.closest('section.rod');
  if (!section) return 'outside the sections';
  const heading = section.querySelector('h2') ?? section.querySelector('h1, h3');
  return `section ${sections.indexOf(section) + 1} (${short(heading?.textContent)})`;
};

const described = element => `<${element.tagName.toLowerCase()}${element.id ? ' id=' + element.id : ''}` +
  `${element.getAttribute('class') ? ' class=' + element.getAttribute('class') : ''}>`;

const inSvg = element => element.ownerSVGElement != null || element.tagName.toLowerCase() === 'svg';

// What is drawn: no templates, no hidden things, nothing that is meant for screen readers alone.
const shown = element => {
  if (element.closest('defs, title, desc, style, head, symbol, pattern, marker, clipPath, mask, script')) return false;
  const style = getComputedStyle(element);
  if (style.display === 'none' || style.visibility !== 'visible') return false;
  for (let each = element; each; each = each.parentElement) {
    const computed = getComputedStyle(each);
    if (computed.display === 'none' || computed.opacity === '0') return false;
    if (computed.clipPath.startsWith('inset(50%') || computed.clip === 'rect(0px, 0px, 0px, 0px)') return false;
  }
  return true;
};

// The text that can be seen, with a blank wherever a box ends: cells of a table are words of their own.
const seen = section => {
  const box = element => getComputedStyle(element).display === 'inline' ? box(element.parentElement) : element;
  const walker = document.createTreeWalker(section, NodeFilter.SHOW_TEXT);
  let text = '';
  let last = null;
  while (walker.nextNode()) {
    const parent = walker.currentNode.parentElement;
    if (!shown(parent)) continue;
    text += (last && box(parent) !== last ? ' ' : '') + walker.currentNode.data;
    last = box(parent);
  }
  return words(text);
};

// Black, white and gray as one number from 0 to 1; null where there is no color; 'hue' where there is one.
const gray = (color, ...opacities) => {
  if (!color || color === 'none' || color === 'transparent' || color.startsWith('url(')) return null;
  const parts = color.match(/^rgba?\(([\d.]+), ([\d.]+), ([\d.]+)(?:, ([\d.]+))?\)$/);
  if (!parts) return 'hue';
  const [r, g, b] = parts.slice(1, 4).map(Number);
  const alpha = opacities.reduce((all, each) => all * Number(each), Number(parts[4] ?? 1));
  if (alpha === 0) return null;
  if (r !== g || g !== b) return 'hue';
  return (r / 255) * alpha + 1 - alpha;
};

// Contrast as the Web Content Accessibility Guidelines 2.2 define it, of two grays.
const contrast = (a, b) => {
  const light = v => v <= 0.04045 ? v / 12.92 : ((v + 0.055) / 1.055) ** 2.4;
  const [low, high] = [light(a), light(b)].sort((x, y) => x - y);
  return (high + 0.05) / (low + 0.05);
};

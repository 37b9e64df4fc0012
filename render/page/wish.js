'use strict';
// A client draws a number to where the opening is asked for: on the plan or in the view into the
// room, by pointer or by keys. It is a wish and moves nothing. What is drawn lands where the
// program's own walk would have it land. Lengths are millimetres of building.
const wishing = (said, kept) => {
const $$ = (s, of) => [...(of || document).querySelectorAll(s)], numbers = t => t.split(' ').map(Number);
const [step, slack, spoken, zoom] = numbers(document.body.dataset.draw);
const whole = v => Math.round(v * 1e6) / 1e6, onStep = v => whole(Math.round(v / step) * step);
const rooms = new Map($$('.room').map(r => [r.dataset.room, {
	id: r.dataset.room, tall: +r.dataset.tall,
	outline: $$('.lit').find(l => l.dataset.room === r.dataset.room).getAttribute('points').split(' ').map(p => p.split(',').map(v => v / zoom)),
	faces: r.dataset.faces.split(';').filter(Boolean).map(t => { const [id, ...n] = t.split(' '), [x, y, ux, uy, vx, vy, long] = n.map(Number); return {id, x, y, ux, uy, vx, vy, long}; }),
}]));
// What can be drawn, and where it is: along its face and up, or a point of its ceiling.
const own = new Map($$('.opening[data-host]').map(item => {
	const d = item.dataset, [x, y, z] = numbers(d.foot), a = +d.a, b = +d.b;
	return [d.of, {of: d.of, item, room: rooms.get(item.closest('.room').dataset.room), isOver: d.over === 'true', host: d.host, a, b, at: {x, y, z}}];
}));
const now = o => { const to = (said.answers[o.of] || {}).to; return to ? {host: to[0], a: to[1], b: to[2]} : o; };

function isInside(room, x, y) {
	let is = false;
	room.outline.forEach(([ax, ay], i) => {
		const [bx, by] = room.outline[(i || room.outline.length) - 1];
		if ((ay > y) !== (by > y) && x < (bx - ax) * (y - ay) / (by - ay) + ax) is = !is;
	});
	return is;
}
function placeOf(o, spot) {
	if (spot.host === o.host && spot.a === o.a && spot.b === o.b) return o.at;
	if (o.isOver) return {x: spot.a, y: spot.b, z: o.room.tall};
	const f = o.room.faces.find(f => f.id === spot.host);
	return f && {x: f.x + f.ux * spot.a, y: f.y + f.uy * spot.a, z: spot.b};
}
const far = (o, spot) => { const p = placeOf(o, spot); return p ? Math.hypot(p.x - o.at.x, p.y - o.at.y, p.z - o.at.z) : 0; };
// What is hardly off is not asked for.
function settled(o, spot) {
	let {host, a, b} = spot;
	if (o.isOver) return {host, a: onStep(a), b: onStep(b), isOff: Math.hypot(onStep(a) - o.a, onStep(b) - o.b) > slack};
	const isLevel = Math.abs(b - o.b) <= slack, isUpright = host === o.host && Math.abs(a - o.a) <= slack;
	return {host, a: isUpright ? o.a : most(a, o.room.faces.find(f => f.id === host).long), b: isLevel ? o.b : most(b, o.room.tall), isOff: !isLevel || !isUpright};
}
const most = (v, l) => Math.max(onStep(v) > l ? whole(onStep(v) - step) : onStep(v), 0);

// From a point of a picture to a place of the room and back.
const camera = svg => { const [x, y, z, bearing, focal, level] = numbers(svg.dataset.camera), b = bearing * Math.PI / 180; return {x, y, z, focal, level, middle: svg.viewBox.baseVal.width / 2, fx: Math.sin(b), fy: -Math.cos(b), rx: Math.cos(b), ry: Math.sin(b)}; };
function spotAt(svg, o, px, py) {
	if (!svg.dataset.camera) return onPlan(o, px / zoom, py / zoom);
	const c = camera(svg), r = (px - c.middle) / c.focal, up = (c.level - py) / c.focal;
	const wx = c.fx + r * c.rx, wy = c.fy + r * c.ry;
	if (o.isOver) {
		const k = (o.room.tall - c.z) / up, x = c.x + wx * k, y = c.y + wy * k;
		return up > 0 && isInside(o.room, x, y) ? {host: o.room.id, a: x, b: y} : null;
	}
	let best = null, nearest = Infinity;
	for (const f of o.room.faces) {
		const toward = wx * f.vx + wy * f.vy;
		if (toward >= 0) continue;
		const k = ((f.x - c.x) * f.vx + (f.y - c.y) * f.vy) / toward;
		const a = (c.x + wx * k - f.x) * f.ux + (c.y + wy * k - f.y) * f.uy, b = c.z + up * k;
		if (k <= 0 || k >= nearest || a < 0 || a > f.long || b < 0 || b > o.room.tall) continue;
		nearest = k;
		best = {host: f.id, a, b};
	}
	return best;
}
function onPlan(o, x, y) {
	if (o.isOver) return isInside(o.room, x, y) ? {host: o.room.id, a: x, b: y} : null;
	let best = null, nearest = Infinity;
	for (const f of o.room.faces) {
		const a = Math.max(0, Math.min(f.long, (x - f.x) * f.ux + (y - f.y) * f.uy));
		const off = Math.hypot(x - f.x - f.ux * a, y - f.y - f.uy * a);
		if (off < nearest) { nearest = off; best = {host: f.id, a, b: now(o).b}; }
	}
	return best;
}
function pointOf(svg, p) {
	if (!svg.dataset.camera) return {x: p.x * zoom, y: p.y * zoom};
	const c = camera(svg), depth = (p.x - c.x) * c.fx + (p.y - c.y) * c.fy;
	return depth < 100 ? null : {x: c.middle + c.focal * ((p.x - c.x) * c.rx + (p.y - c.y) * c.ry) / depth, y: c.level - c.focal * (p.z - c.z) / depth};
}

// What is asked for: an arrow in each picture, and how far that is beside the opening.
function arrow(svg, o, spot) {
	const p = placeOf(o, spot), from = pointOf(svg, o.at), to = p && pointOf(svg, p), ctm = svg.getScreenCTM();
	if (!from || !to) return;
	const k = ctm && ctm.a ? 1 / ctm.a : 1, long = Math.hypot(to.x - from.x, to.y - from.y) || 1, ux = (to.x - from.x) / long, uy = (to.y - from.y) / long;
	const make = (name, values) => { const el = document.createElementNS(svg.namespaceURI, name); for (const [n, v] of Object.entries(values)) el.setAttribute(n, v); g.append(el); return el; };
	const g = document.createElementNS(svg.namespaceURI, 'g'), head = (s) => (to.x - k * 10 * (ux + s * uy * .5)) + ' ' + (to.y - k * 10 * (uy - s * ux * .5));
	g.setAttribute('class', 'wish' + (o.item.closest('.room').classList.contains('here') ? ' here' : ''));
	g.dataset.of = o.of;
	g.dataset.room = o.room.id;
	make('path', {d: 'M' + from.x + ' ' + from.y + 'L' + to.x + ' ' + to.y + 'M' + head(1) + 'L' + to.x + ' ' + to.y + 'L' + head(-1), 'stroke-width': 2.5 * k});
	make('circle', {cx: to.x, cy: to.y, r: 9 * k, 'stroke-width': 2 * k, 'stroke-dasharray': 4 * k});
	const box = svg.viewBox.baseVal, atEnd = to.x > box.x + box.width * .8;
	make('text', {x: to.x + (atEnd ? -12 : 12) * k, y: to.y - 8 * k, 'font-size': 16 * k, 'stroke-width': 4 * k, 'text-anchor': atEnd ? 'end' : 'start'}).textContent = length(o, spot);
	svg.append(g);
}
const spanIn = el => $$('span', el).find(s => !s.lang || s.lang === document.documentElement.dataset.lang) || el;
const length = (o, spot) => spanIn(document.querySelector('#far')).textContent.replace('#', Math.round(far(o, spot) / spoken));
function show(of, spot) {
	const o = own.get(of);
	for (const g of $$('.wish')) if (g.dataset.of === of) g.remove();
	if (!o) return;
	const isDrawn = spot || (said.answers[of] || {}).to, to = spot || now(o);
	for (const pin of isDrawn ? $$('.pin') : []) if (pin.dataset.of === of) arrow(pin.ownerSVGElement, o, to);
	const told = o.item.querySelector('.wished');
	told.hidden = !isDrawn;
	for (const s of $$('.drawn span', told)) s.textContent = (s.dataset.text = s.dataset.text || s.textContent).replace('#', Math.round(far(o, to) / spoken));
}
function keep(o, spot) {
	const one = said.answers[o.of] = said.answers[o.of] || {};
	if (spot) { one.is = 'change'; one.to = [spot.host, spot.a, spot.b]; }
	else { delete one.to; if (one.is === 'change' && !one.note) one.is = ''; }
	show(o.of);
	kept(o.item);
}

function drag(pin) {
	const o = own.get(pin.dataset.of), svg = pin.ownerSVGElement;
	if (!o) return;
	let held = null;
	const inSvg = e => new DOMPoint(e.clientX, e.clientY).matrixTransform(svg.getScreenCTM().inverse());
	pin.addEventListener('pointerdown', e => {
		const from = placeOf(o, now(o));
		if (e.button || !from) return;
		held = {x: e.clientX, y: e.clientY, at: inSvg(e), from: pointOf(svg, from), to: null};
		pin.setPointerCapture(e.pointerId);
	});
	pin.addEventListener('pointermove', e => {
		if (!held || !held.from || !held.to && Math.hypot(e.clientX - held.x, e.clientY - held.y) < 6) return;
		const p = inSvg(e), spot = spotAt(svg, o, held.from.x + p.x - held.at.x, held.from.y + p.y - held.at.y);
		if (spot) show(o.of, held.to = settled(o, spot));
	});
	pin.addEventListener('pointerup', () => { if (held && held.to) keep(o, held.to.isOff ? held.to : null); held = null; });
	pin.addEventListener('pointercancel', () => { held = null; show(o.of); });
	pin.addEventListener('keydown', e => {
		const way = {ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, 1], ArrowDown: [0, -1]}[e.key], isBack = e.key === 'Delete' || e.key === 'Backspace';
		if (!way && !isBack || e.ctrlKey || e.altKey || e.metaKey) return;
		e.preventDefault();
		e.stopPropagation(); // the arrows of the page go from room to room
		if (isBack) return keep(o, null);
		const n = step * (e.shiftKey ? 6 : 1), to = moved(o, way[0] * n, way[1] * n);
		if (to) keep(o, to.a === o.a && to.b === o.b && to.host === o.host ? null : to);
	});
}
// By keys a place goes by whole steps, and comes back to its own.
function moved(o, right, up) {
	const {host, a, b} = now(o), f = o.room.faces.find(f => f.id === host);
	const by = (v, d, home) => { const to = d ? onStep(v + d) : v; return Math.abs(to - home) < step / 2 ? home : to; };
	if (o.isOver) { const x = by(a, right, o.a), y = by(b, -up, o.b); return isInside(o.room, x, y) ? {host, a: x, b: y} : null; }
	const x = by(a, right, o.a), y = by(b, up, o.b);
	return f && x >= 0 && x <= f.long && y >= 0 && y <= o.room.tall ? {host, a: x, b: y} : null;
}
for (const pin of $$('.pin')) drag(pin);
for (const b of $$('.put-back')) b.onclick = () => keep(own.get(b.closest('.opening').dataset.of), null);
return {
	all() { for (const of of own.keys()) if ((said.answers[of] || {}).to) show(of); },
	word(of) { const to = (said.answers[of] || {}).to; return to ? '@' + to.join(',') + ' ' : ''; },
	back(of) { if (said.answers[of] && said.answers[of].is !== 'change') { delete said.answers[of].to; show(of); } },
};
};

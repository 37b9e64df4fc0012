(() => {
const $ = s => document.querySelector(s), $$ = (s, of) => [...(of || document).querySelectorAll(s)];
const root = document.documentElement, body = document.body;
const rooms = $$('.room'), key = 'studbay ' + body.dataset.title + ' ' + body.dataset.revision + ' ' + body.dataset.stamp;
let at = 0, isKept = true, isSent = false, said = {answers: {}, notes: {}, initials: {}, by: ''}, wishes = null;
const store = {
	load() { try { return localStorage.getItem(key) || ''; } catch { return ''; } },
	save() { isSent = false; try { localStorage.setItem(key, JSON.stringify(said)); isKept = true; } catch { isKept = false; /* a page from a mail may have none */ } },
};
const oneLine = t => (t || '').replace(/\s+/g, ' ').trim();

// Languages and colours.
const nameOf = el => el.getAttribute('data-name-' + root.dataset.lang) || el.getAttribute('data-name') || '';
function speak(tag) {
	root.lang = root.dataset.lang = tag;
	for (const el of $$('button,input,[role=group],.pin')) {
		const name = nameOf(el);
		if (name) el.setAttribute('aria-label', (el.matches('.pin') ? el.querySelector('text').textContent + ': ' : '') + name);
		if (name && el.matches('input')) el.placeholder = name;
	}
	for (const b of $$('.lang')) b.setAttribute('aria-pressed', b.dataset.to === tag);
	where();
}
for (const b of $$('.lang')) b.onclick = () => { speak(b.dataset.to); wishes.all(); };
const isDark = () => root.dataset.theme === 'dark';
root.dataset.theme = matchMedia('(prefers-color-scheme: dark)').matches ? 'dark' : 'light';
$('#dark').onclick = () => { root.dataset.theme = isDark() ? 'light' : 'dark'; };

// Rooms.
function where() {
	if (!rooms.length) return;
	$('#room-name').textContent = rooms[at].dataset.name;
	$('#sub').textContent = body.dataset.title + ', ' + (at + 1) + ' / ' + rooms.length;
}
function go(to, of) {
	if (!rooms.length) return;
	at = (to + rooms.length) % rooms.length;
	const room = rooms[at];
	for (const r of rooms) r.classList.toggle('here', r === room);
	for (const l of $$('.level')) l.classList.toggle('here', l.dataset.level === room.dataset.level);
	for (const el of $$('.lit,.level .pin,.level .wish')) el.classList.toggle('here', el.dataset.room === room.dataset.room);
	show(room.dataset.box);
	where();
	choose(of);
	if (!of) (matchMedia('(min-width:1000px)').matches ? $('main') : window).scrollTo(0, 0);
}
function choose(of) {
	for (const el of $$('.chosen')) el.classList.remove('chosen');
	if (!of) return;
	for (const el of $$('[data-of="' + of + '"]')) el.classList.add('chosen');
	const item = document.getElementById('o-' + of);
	if (item) item.scrollIntoView({block: 'nearest'});
}
const roomOf = of => rooms.findIndex(r => r.querySelector('#o-' + of));
$('#back').onclick = () => go(at - 1);
$('#next').onclick = () => go(at + 1);
for (const p of $$('.pin')) {
	p.onclick = () => choose(p.dataset.of);
	p.onkeydown = e => { if (e.key === 'Enter' || e.key === ' ') { e.preventDefault(); choose(p.dataset.of); } };
}
for (const h of $$('.told')) h.onclick = () => {
	const item = h.closest('.opening');
	choose(item.dataset.of);
	item.querySelector('.note').hidden = false;
};
for (const b of $$('[data-go]')) b.onclick = () => { const to = roomOf(b.dataset.go); if (to >= 0) go(to, b.dataset.go); };
addEventListener('keydown', e => {
	if (e.target.closest('input,textarea,dialog') || e.ctrlKey || e.altKey || e.metaKey) return;
	if (e.key === 'ArrowRight' || e.key === 'PageDown') { e.preventDefault(); go(at + 1); }
	if (e.key === 'ArrowLeft' || e.key === 'PageUp') { e.preventDefault(); go(at - 1); }
});
$('#see').onclick = () => {
	const on = body.classList.toggle('seen');
	$('#see').setAttribute('aria-pressed', on);
	if (wishes) wishes.all();
};

// The plan: pan, pinch and wheel. While a finger moves it is only shifted; its box follows
// when the finger is lifted.
let box = [0, 0, 1, 1];
const level = () => $('.level.here'), boxOf = t => t.split(' ').map(Number);
function show(text) { box = typeof text === 'string' ? boxOf(text) : text; const l = level(); if (l) { l.style.transform = ''; l.setAttribute('viewBox', box.map(v => v.toFixed(2)).join(' ')); pins(l); } }
// Pins are as large on every screen, whatever the plan's scale: 10.5 px round.
function pins(l) { const k = 10.5 / 7 / (scale() || 1); for (const p of $$('.pin.here', l)) { const f = p.querySelector('.foot'), x = f.getAttribute('cx'), y = f.getAttribute('cy'); p.setAttribute('transform', 'translate(' + x + ' ' + y + ') scale(' + k.toFixed(3) + ') translate(' + -x + ' ' + -y + ')'); } if (wishes) wishes.all(); }
addEventListener('resize', () => { const l = level(); if (l) pins(l); });
function scale() { const r = $('#plans').getBoundingClientRect(); return Math.min(r.width / box[2], r.height / box[3]); }
function zoom(by, x, y) {
	const l = level();
	if (!l) return;
	const whole = boxOf(l.dataset.whole), least = whole[2] / 40, most = whole[2] * 1.5;
	const wide = Math.max(least, Math.min(most, box[2] / by)), k = wide / box[2];
	const r = $('#plans').getBoundingClientRect(), s = scale();
	const px = box[0] + box[2] / 2 + (x - r.left - r.width / 2) / s, py = box[1] + box[3] / 2 + (y - r.top - r.height / 2) / s;
	show([px - (px - box[0]) * k, py - (py - box[1]) * k, box[2] * k, box[3] * k]);
}
function middle(by) { const r = $('#plans').getBoundingClientRect(); zoom(by, r.left + r.width / 2, r.top + r.height / 2); }
$('#larger').onclick = () => middle(1.4);
$('#smaller').onclick = () => middle(1 / 1.4);
$('#whole').onclick = () => { const l = level(); if (l) show(l.dataset.whole); };
const fingers = new Map();
let began = null;
const spread = () => { const [a, b] = [...fingers.values()]; return {x: (a.x + b.x) / 2, y: (a.y + b.y) / 2, d: Math.hypot(a.x - b.x, a.y - b.y) || 1}; };
function settle() {
	if (!began) return;
	const s = scale();
	show([box[0] - began.dx / s, box[1] - began.dy / s, box[2], box[3]]);
	began = null;
}
$('#plans').addEventListener('pointerdown', e => {
	if (e.target.closest('button,.pin')) return;
	$('#plans').setPointerCapture(e.pointerId);
	settle();
	fingers.set(e.pointerId, {x: e.clientX, y: e.clientY});
	began = fingers.size === 1 ? {x: e.clientX, y: e.clientY, dx: 0, dy: 0} : null;
});
$('#plans').addEventListener('pointermove', e => {
	if (!fingers.has(e.pointerId)) return;
	if (fingers.size === 1 && began) {
		began.dx = e.clientX - began.x; began.dy = e.clientY - began.y;
		const l = level();
		if (l) l.style.transform = 'translate(' + began.dx + 'px,' + began.dy + 'px)';
	}
	const was = fingers.size === 2 ? spread() : null;
	fingers.set(e.pointerId, {x: e.clientX, y: e.clientY});
	if (was) {
		const now = spread(), s = scale();
		show([box[0] - (now.x - was.x) / s, box[1] - (now.y - was.y) / s, box[2], box[3]]);
		zoom(now.d / was.d, now.x, now.y);
	}
});
for (const end of ['pointerup', 'pointercancel']) $('#plans').addEventListener(end, e => {
	if (!fingers.delete(e.pointerId)) return;
	settle();
	if (fingers.size === 1) { const f = [...fingers.values()][0]; began = {x: f.x, y: f.y, dx: 0, dy: 0}; }
});
$('#plans').addEventListener('wheel', e => { e.preventDefault(); zoom(Math.exp(-e.deltaY / 400), e.clientX, e.clientY); }, {passive: false});

// Search.
$('#search').oninput = () => {
	const want = oneLine($('#search').value).toLowerCase(), hits = $('#hits');
	hits.replaceChildren();
	$('#found').hidden = !want;
	if (!want) return;
	let n = 0;
	rooms.forEach((r, i) => {
		const put = (text, of) => {
			if (n >= 12 || !text.toLowerCase().includes(want)) return;
			n++;
			const li = document.createElement('li'), b = document.createElement('button');
			b.type = 'button';
			b.textContent = text;
			b.onclick = () => { $('#search').value = ''; $('#found').hidden = true; go(i, of); };
			li.append(b);
			hits.append(li);
		};
		put(r.dataset.name);
		for (const o of $$('.opening', r)) put(r.dataset.name + ': ' + spoken(o.querySelector('.headline')), o.dataset.of);
	});
	$('#none').hidden = n > 0;
};
const spoken = el => oneLine($$('span', el).filter(s => !s.lang || s.lang === root.dataset.lang).map(s => s.textContent).join(' '));

// Answers.
function paint(item) {
	const one = said.answers[item.dataset.of] || {};
	for (const b of $$('.answer', item)) b.setAttribute('aria-pressed', b.dataset.answer === one.is);
	const note = item.querySelector('.note'), area = note.querySelector('textarea');
	if (document.activeElement !== area) area.value = one.note || '';
	if (one.is === 'change' || one.is === 'question' || one.note) note.hidden = false;
}
function count() {
	const all = $$('.opening'), n = all.filter(i => (said.answers[i.dataset.of] || {}).is).length;
	$('#count').textContent = n + ' / ' + all.length;
}
for (const item of $$('.opening')) {
	const of = item.dataset.of, one = () => said.answers[of] || (said.answers[of] = {});
	for (const b of $$('.answer', item)) b.onclick = () => {
		one().is = one().is === b.dataset.answer ? '' : b.dataset.answer;
		wishes.back(of);
		choose(of); paint(item); count(); store.save();
		if (one().is === 'change' || one().is === 'question') item.querySelector('textarea').focus();
	};
	item.querySelector('textarea').oninput = e => { one().note = e.target.value; store.save(); };
}
for (const r of rooms) {
	r.querySelector('.room-note').oninput = e => { said.notes[r.dataset.room] = e.target.value; store.save(); };
	r.querySelector('.initials').oninput = e => { said.initials[r.dataset.room] = e.target.value; store.save(); };
}
function text() {
	const lines = ['Studbay answers 1', 'plan ' + oneLine(body.dataset.title)];
	if (body.dataset.revision) lines.push('revision ' + oneLine(body.dataset.revision));
	if (oneLine(said.by)) lines.push('by ' + oneLine(said.by));
	const now = new Date(), two = n => String(n).padStart(2, '0');
	lines.push('date ' + now.getFullYear() + '-' + two(now.getMonth() + 1) + '-' + two(now.getDate()), '');
	const put = (what, of, note) => lines.push((what + ' ' + of + ' ' + oneLine(note)).trim());
	for (const r of rooms) {
		const id = r.dataset.room;
		if (oneLine(said.initials[id])) put('initials', id, said.initials[id]);
		if (oneLine(said.notes[id])) put('note', id, said.notes[id]);
		for (const item of $$('.opening', r)) {
			const one = said.answers[item.dataset.of];
			if (!one) continue;
			if (one.is) put(one.is, item.dataset.of, wishes.word(item.dataset.of) + (one.note || ''));
			else if (oneLine(one.note)) put('note', item.dataset.of, one.note);
		}
	}
	lines.push('end');
	return lines.join('\n') + '\n';
}
let url = '';
function refresh() {
	$('#text').value = text();
	if (url) URL.revokeObjectURL(url);
	url = URL.createObjectURL(new Blob([$('#text').value], {type: 'text/plain'}));
	$('#save').href = url;
}
$('#send').onclick = () => { $('#by').value = said.by || ''; $('#copied').hidden = true; refresh(); $('#share').hidden = !navigator.share; $('#summary').showModal(); };
$('#by').oninput = () => { said.by = $('#by').value; store.save(); refresh(); };
$('#share').onclick = () => navigator.share({text: $('#text').value}).then(() => { isSent = true; }, () => {});
$('#save').onclick = () => { isSent = true; };
// Where the browser keeps nothing, leaving would lose what was said and not sent.
addEventListener('beforeunload', e => { if (!isKept && !isSent && Object.keys(said.answers).length + Object.keys(said.notes).length > 0) e.preventDefault(); });
$('#copy').onclick = async () => {
	let is = true;
	try { await navigator.clipboard.writeText($('#text').value); } catch { $('#text').select(); is = document.execCommand('copy'); }
	$('#copied').hidden = !is;
	if (is) isSent = true;
};
$('#close').onclick = () => $('#summary').close();

try { const kept = JSON.parse(store.load() || '{}'); for (const k of Object.keys(said)) if (typeof kept[k] === typeof said[k]) said[k] = kept[k]; } catch { /* what cannot be read is none */ }
for (const item of $$('.opening')) paint(item);
for (const r of rooms) { r.querySelector('.room-note').value = said.notes[r.dataset.room] || ''; r.querySelector('.initials').value = said.initials[r.dataset.room] || ''; }
count();
wishes = wishing(said, item => { choose(item.dataset.of); paint(item); count(); store.save(); });
const tags = $$('.lang').map(b => b.dataset.to), mine = (navigator.language || '').slice(0, 2);
speak(tags.includes(mine) ? mine : root.dataset.lang);
const wanted = rooms.findIndex(r => '#' + r.id === location.hash);
if (rooms.length) go(Math.max(0, wanted));
else if ($('.level')) { $('.level').classList.add('here'); show($('.level').dataset.whole); } // no opening yet: the plan alone
if (matchMedia('(min-width:1000px)').matches) $('#see').click();
body.classList.add('ready');
})();

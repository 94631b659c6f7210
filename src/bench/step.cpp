#include "bench/act.hpp"
#include "bench/bench.hpp"
#include "bench/choices.hpp"
#include "bench/kept_lists.hpp"
#include "bench/keys.hpp"
#include "bench/learning.hpp"
#include "bench/leaving.hpp"
#include "bench/making.hpp"
#include "bench/mulling.hpp"
#include "bench/pads_book.hpp"
#include "bench/pads_photos.hpp"
#include "bench/pads_plan.hpp"
#include "bench/pads_shared.hpp"
#include "bench/pads_shelf.hpp"
#include "bench/pads_top_bar.hpp"
#include "bench/pans.hpp"
#include "bench/record.hpp"
#include "bench/rewetting.hpp"
#include "bench/scrolling.hpp"
#include "bench/shelf.hpp"
#include "bench/sound_cues.hpp"
#include "bench/today.hpp"
#include "bench/touch.hpp"
#include "bench/waking.hpp"
#include "session/bytes.hpp"
#include "words/bench_says.hpp"
#include "words/card_names.hpp"
#include "words/session_says.hpp"

#include <algorithm>
#include <cmath>

namespace bench {

namespace {

constexpr std::int64_t notice_ms = 4000;

// Under the muller, more than a usual pass, so that few need it. Under the knife each minute
// counts: two of them are whether the powder was worked in.
std::int64_t sign_of_life_ms(session::Stage stage) {
  return stage == session::Stage::wetting_out ? 60000 : 240000;
}

std::optional<double> flow_of(const Bench& bench) {
  if (!bench.folded || !bench.folded->standing.flow_now) return std::nullopt;
  return bench.folded->standing.flow_now->value;
}

// What of a step is heard, beside what it appended.
struct TapOutcome {
  std::optional<PadId> tapped;
  bool not_counted = false;
};

void search(Bench& bench, const std::string& text) {
  switch (bench.screen) {
  case Screen::plan:
    bench.plan.search = text;
    bench.plan.list = {};
    return;
  case Screen::shelf:
    bench.shelf_page.search = text;
    bench.shelf_page.list = {};
    return;
  case Screen::book:
    bench.book.search = text;
    bench.book.list = {};
    return find_batches(bench);
  case Screen::today:
  case Screen::slab:
  case Screen::pans:
  case Screen::tablet:
  case Screen::binder:
  case Screen::photos: return; // nothing to search
  }
}

void write_on_batch(Bench& bench, PadKind field, const std::string& text) {
  auto* page = std::get_if<BatchPage>(&bench.book.page);
  if (!page) return;
  if (field == BookPad::note_text && page->note) page->note = text;
  if (field == BookPad::name_text && page->name) page->name = text;
}

void typed(Bench& bench, const Text& text, const Now& now) {
  if (!session::is_utf8(text.text))
    return say_error(bench, {words::SessionSay::text_not_utf8, {}}, now);
  if (text.field.kind == PhotosPad::folder_text) return void(bench.photos.folder = text.text);
  const std::string kept = session::first_characters(text.text, session::longest_text);
  if (kept.size() < text.text.size())
    say_error(bench, {words::BenchSay::text_shortened, {std::to_string(session::longest_text)}},
              now);
  if (text.field.kind == ShelfPad::says) say_on_card(bench, text.field.arg, kept);
  if (text.field.kind == ShelfPad::jar_says) say_on_jar(bench, text.field.arg, kept);
  if (text.field.kind == SharedPad::search) search(bench, kept);
  if (text.field.kind == BookPad::label_line) bench.tablet.label_line = kept;
  write_on_batch(bench, text.field.kind, kept);
  if (text.field.kind == PlanPad::name) {
    bench.plan.name = kept;
    bench.plan.name_typed = !kept.empty();
  }
}

void empty_field(Bench& bench, const std::string& field, const Now& now) {
  typed(bench, {pad_named(field).value_or(PadId{SharedPad::search, ""}), ""}, now);
}

void tapped(Bench& bench, const PadId& pad, const Now& now, Effects& effects, TapOutcome& outcome) {
  if (!pad_of(layout(bench), pad)) return;
  bench.touch.drag.reset(); // by a key: another list may lie there now
  outcome.tapped = pad;
  if (pad.kind == SharedPad::clear) return empty_field(bench, pad.arg, now);
  if (turns_list(bench, pad)) return;
  const std::string batch = bench.batch;
  const auto before = flow_of(bench);
  act(bench, pad, now, effects);
  const bool moved = before && batch == bench.batch && flow_of(bench) && flow_of(bench) != before;
  if (moved && *before > 0 && bench.tablet.motion) bench.glide = {*before, now.run_ms};
}

// A pointer that merely passes over the glass changes nothing.
void pointed(Bench& bench, const Pointer& pointer, const Now& now, Effects& effects,
             TapOutcome& outcome) {
  if (move_region(bench, pointer)) return; // redraw is as it was: wanted
  const auto before = bench.touch.press;
  const bool down = pointer.phase == Pointer::down;
  const Recognised r = recognise(bench.touch, down ? layout(bench) : Layout{}, pointer);
  const bool moved = drag_list(bench, r, now);
  effects.redraw = bench.touch.press != before || r.tap || r.not_counted || moved;
  if (r.not_counted) bench.notice = {r.not_counted, std::nullopt, now.run_ms + notice_ms};
  if (bench.touch.press) bench.keys.focus.reset();
  if (r.tap) tapped(bench, *r.tap, now, effects, outcome);
  outcome.not_counted = r.not_counted.has_value();
}

void keyed(Bench& bench, const Key& key, const Now& now, Effects& effects, TapOutcome& outcome) {
  const KeyMeans means = key_means(bench, key);
  effects.keep_tablet = means.bound;
  if (means.not_counted) bench.notice = {means.not_counted, std::nullopt, now.run_ms + notice_ms};
  if (means.tap) tapped(bench, *means.tap, now, effects, outcome);
  outcome.not_counted = means.not_counted.has_value();
}

void index_logs(Bench& bench) {
  bench.speaks_of.clear();
  bench.offsets.clear();
  for (std::size_t i = 0; i < bench.logs.size(); ++i) {
    const std::string* last = nullptr; // lines of one batch mostly follow each other
    for (const session::Line& line : bench.logs[i].lines) {
      session::note_offset(bench.offsets, bench.logs[i].session, line);
      if (line.batch.empty() || (last && *last == line.batch)) continue;
      last = &line.batch;
      auto& spoken = bench.speaks_of[line.batch];
      if (spoken.empty() || spoken.back() != i) spoken.push_back(i);
    }
  }
  bench.batches = session::batch_ids(session::all_of(bench.logs));
  bench.discarded.clear();
  bench.index.lists_stale = true;
  learn_lessons(bench);
  restock(bench);
  hear(bench);
}

std::string name_in(const session::Card& card, words::Language language) {
  return words::card_name_of_file(card.id, words::card_name_for_file(card.id, card.name), language);
}

// What ships has its names in the language, in what was read too: some of it before another
// language was chosen.
void name_cards_in(std::vector<session::Log>& logs, words::Language language) {
  for (session::Log& log : logs)
    for (session::Line& line : log.lines) {
      auto* laid = std::get_if<session::LaidOut>(&line.event);
      if (!laid) continue;
      session::Card card = *laid->card;
      card.name = name_in(card, language);
      if (card.name != laid->card->name) laid->card = std::move(card);
    }
}

void loaded(Bench& bench, Loaded input, const Now& now, Effects& effects) {
  name_cards_in(input.logs, words::spoken());
  bench.logs.resize(1); // this session's own
  for (session::Log& log : input.logs)
    if (log.session != bench.sitting.session) bench.logs.push_back(std::move(log));
  bench.damage = std::move(input.damage);
  bench.faults = std::move(input.faults);
  bench.loaded = true;
  bench.folds = {};
  index_logs(bench);
  index_all(bench, now);
  recall_room(bench, now);
  offer_to_go_on(bench, now);
  open_at_hand(bench, now, effects);
}

void spoken(Bench& bench, words::Language language, const Now& now) {
  name_cards_in(bench.logs, language);
  if (auto& card = bench.shelf_page.card) card->name = name_in(*card, language);
  bench.spoken = language;
  if (!bench.loaded) return restock(bench);
  bench.folds = {};
  index_logs(bench);
  index_all(bench, now);
  if (bench.folded) refold(bench, now);
  if (bench.pans.folded) refold_pans(bench, now);
}

bool speaks_of(const session::Log& log, const std::string& batch) {
  return !batch.empty() && std::any_of(log.lines.begin(), log.lines.end(),
                                       [&](const auto& line) { return line.batch == batch; });
}

// Whole sessions take the place of what was known of them.
void arrived(Bench& bench, Arrived input, const Now& now) {
  name_cards_in(input.logs, words::spoken());
  ++bench.folds.arrivals;
  bool of_this_batch = false;
  for (session::Log& log : input.logs) {
    if (log.session == bench.sitting.session) continue;
    const auto known = std::find_if(bench.logs.begin(), bench.logs.end(),
                                    [&](const auto& l) { return l.session == log.session; });
    // A copy of what was known already is no news.
    const bool more = known == bench.logs.end() || known->lines != log.lines;
    of_this_batch |= more && speaks_of(log, bench.batch);
    const bool changed = more || known->damaged != log.damaged || known->future != log.future;
    for (const session::Line& line : log.lines)
      if (changed && !line.batch.empty()) lines_came(bench, line.batch);
    if (known == bench.logs.end())
      bench.logs.push_back(std::move(log));
    else
      *known = std::move(log);
  }
  std::erase_if(bench.damage, [&](const session::Damage& d) {
    return std::find(input.files.begin(), input.files.end(), d.file) != input.files.end();
  });
  std::move(input.damage.begin(), input.damage.end(), std::back_inserter(bench.damage));
  bench.faults = std::move(input.faults);
  index_logs(bench);
  recall_room(bench, now);
  refresh_index(bench, now);
  if (of_this_batch) say_error(bench, news_of_slab(bench), now);
}

// Another size has other pages.
void resized(Bench& bench, const Display& display, const Now& now) {
  constexpr double small_mm = 9 * 25.4; // across
  if (bench.display == display) return;
  bench.display = display;
  if (std::hypot(display.mm.w, display.mm.h) < small_mm)
    say_error(bench, {words::BenchSay::display_small, {}}, now);
  bench.plan.list = bench.shelf_page.list = bench.book.list = bench.today.list = {};
  bench.touch.drag.reset();
  bench.pans.page = 0;
  if (auto* ranges = std::get_if<RangesPage>(&bench.book.page)) ranges->page = 0;
  if (auto* story = std::get_if<StoryPage>(&bench.book.page)) story->ranges.page = 0;
}

void ticked(Bench& bench, const Now& now) {
  if (held_to_unlock(bench.touch, now.run_ms)) {
    bench.locked = false;
    bench.touch.press.reset();
  }
  if (now.run_ms >= bench.notice.until_ms) bench.notice = {};
  if (bench.glide && now.run_ms - bench.glide->since_ms >= glide_ms) bench.glide.reset();
}

// A program that is killed says no goodbye: what it wrote last is all that is known of the pass.
void give_sign_of_life(Bench& bench, const Now& now, Effects& effects) {
  if (!has_begun(bench) || !bench.folded || bench.sitting.left) return;
  const session::Pass* pass = running(*bench.folded);
  if (!pass) return;
  const std::int64_t t = now.run_ms - bench.sitting.began_run_ms;
  if (t - bench.logs.front().lines.back().t < sign_of_life_ms(pass->stage)) return;
  record(bench, bench.batch, session::GoesOn{}, now, effects);
}

struct Handle {
  Bench& bench;
  const Now& now;
  Effects& effects;
  TapOutcome& outcome;

  void operator()(const Pointer& p) const { pointed(bench, p, now, effects, outcome); }
  void operator()(const Key& k) const { keyed(bench, k, now, effects, outcome); }
  void operator()(const Text& t) const { typed(bench, t, now); }
  void operator()(const Tap& t) const { tapped(bench, t.pad, now, effects, outcome); }
  void operator()(const Tick&) const {} // time passes with every input
  void operator()(const Saved& s) const { bench.saving = {s.n, std::nullopt, s.fallback}; }
  void operator()(const SaveFailed& f) const {
    bench.saving.failure = f.reason;
    if (!f.nothing_is_safe) return;
    bench.saving.confirmed.reset();
    say_error(bench, {words::BenchSay::saved_lines_gone, {}}, now); // read when all is saved again
  }
  void operator()(const Reading& r) const { bench.reading = r; }
  void operator()(Loaded& l) const { loaded(bench, std::move(l), now, effects); }
  void operator()(Arrived& a) const { arrived(bench, std::move(a), now); }
  void operator()(const Resized& r) const { resized(bench, r.display, now); }
  void operator()(const Spoken& s) const { spoken(bench, s.language, now); }
  void operator()(const NotKept& k) const { say_error(bench, k.why, now); }
  void operator()(const ToldWritten& w) const {
    bench.sharing.written = w.file.value_or("");
    if (!w.file) bench.sharing.failure = w.file.error();
  }
  void operator()(FriendsFound& f) const {
    if (!f.file) return void(bench.sharing.failure = f.file.error());
    bench.sharing.none = !*f.file;
    if (*f.file) found_told(bench, **std::move(f.file));
  }
  void operator()(const PaperWritten& w) const {
    bench.paper.writing = false;
    bench.paper.written = w.file.value_or("");
    bench.paper.way = w.way;
    if (w.file) return;
    bench.paper.failure = w.file.error();
    if (bench.screen != Screen::book) say_error(bench, w.file.error(), now);
  }
  void operator()(const PaperNotShown& n) const {
    bench.paper.failure = n.why;
    if (bench.screen != Screen::book) say_error(bench, n.why, now);
  }
  void operator()(const Dropped& d) const { take_dropped(bench, d, now, effects); }
  void operator()(PicturesListed& l) const { take_listed(bench, std::move(l)); }
  void operator()(const ImageSeen& s) const { take_seen(bench, s); }
  void operator()(const PhotoKept& k) const { take_kept(bench, k, now, effects); }
  void operator()(const SwatchRead& r) const { take_read(bench, r, now, effects); }
  void operator()(const HandedOn& h) const {
    bench.tablet.handed_on = h.at;
    effects.keep_tablet = true;
  }
  void operator()(const Leaving&) const { say_goodbye(bench, now, effects); }
  void operator()(const Study&) const {} // see step
  void operator()(const Fitted& l) const { take_fit(bench, l, effects); }
};

// Time passes for the paint with every input, but a finger on the glass must not wait for sums.
bool time_matters(const Input& input) {
  return std::holds_alternative<Tick>(input) || std::holds_alternative<Loaded>(input) ||
         std::holds_alternative<Arrived>(input);
}

}

Bench start(std::string session, std::string device, const Display& display, const Now& now) {
  Bench bench;
  bench.display = display;
  bench.sitting.session = std::move(session);
  bench.sitting.device = std::move(device);
  bench.sitting.began_run_ms = now.run_ms;
  bench.logs.emplace_back();
  bench.logs.front().session = bench.sitting.session;
  bench.logs.front().device = bench.sitting.device;
  restock(bench);
  for (const session::Card* binder : shelf_of(bench, session::CardKind::binder))
    if (bench.plan.binder.empty()) bench.plan.binder = binder->id;
  for (const session::Card* pan : shelf_of(bench, session::CardKind::pan))
    if (bench.plan.pan.empty()) bench.plan.pan = pan->id;
  return bench;
}

Effects step(Bench& bench, Input input, const Now& now) {
  Effects effects;
  if (std::holds_alternative<Study>(input)) { // no time passes for the paint
    study(bench, effects);
    effects.study = wants_to_study(bench);
    effects.redraw = !effects.study && bench.screen == Screen::today && today_changes(bench, now);
    effects.wake_at = wake_at(bench, now);
    return effects;
  }
  effects.redraw = true;
  notice_clock(bench, now, effects);
  TapOutcome outcome;
  std::visit(Handle{bench, now, effects, outcome}, input);
  ticked(bench, now);
  effects.redraw |= move_list(bench, now);
  refresh_index(bench, now);
  offer_binder(bench);
  if (time_matters(input)) {
    refold(bench, now);
    give_sign_of_life(bench, now, effects);
    if (bench.screen == Screen::pans) refold_pans(bench, now);
    ask_how_found(bench, now);
  }
  if (bench.screen == Screen::today) refresh_today(bench, now);
  fold_what_shows(bench);
  keep_lists(bench);
  expect_mulling(bench);
  mark_tack(bench);
  effects.cues = cues_of(bench, effects, outcome.tapped, outcome.not_counted);
  if (making_rings(bench, now) && bench.tablet.sound) effects.cues.push_back(SoundCue::bell);
  effects.wake_at = wake_at(bench, now);
  effects.study = wants_to_study(bench);
  return effects;
}

}

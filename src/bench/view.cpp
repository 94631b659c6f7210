#include "bench/view.hpp"

#include "bench/again.hpp"
#include "bench/choices.hpp"
#include "bench/corrections.hpp"
#include "bench/due.hpp"
#include "bench/known.hpp"
#include "bench/making.hpp"
#include "bench/materials.hpp"
#include "bench/pads_binder.hpp"
#include "bench/pads_more.hpp"
#include "bench/pads_pans.hpp"
#include "bench/pads_shelf.hpp"
#include "bench/pads_slab.hpp"
#include "bench/pads_top_bar.hpp"
#include "bench/paints.hpp"
#include "bench/record.hpp"
#include "bench/told_at_slab.hpp"
#include "bench/touch.hpp"
#include "bench/view_parts.hpp"
#include "paint/digits.hpp"
#include "session/feelings.hpp"
#include "session/resolve.hpp"
#include "session/trail.hpp"
#include "words/lists.hpp"

#include <algorithm>
#include <cmath>

namespace bench {

namespace {

MaterialView card_view(const Bench& bench, const session::Card& card) {
  MaterialView m;
  m.pad = {SlabPad::add, card.id};
  m.kind = card.kind();
  m.name = card.name;
  m.colour = pigment_of(card).colour;
  m.next = next_amount(bench, card);
  m.dropper = dropper_to_tell(bench, card);
  m.corrects = corrects_material(bench);
  for (const session::Total& t : bench.folded->totals)
    if (t.card.id == card.id && t.grams.value > 0) m.grams = t.grams.value;
  return m;
}

// One pad for all pigments bears the colour of the largest part, as the batch does.
MaterialView material_view(const Bench& bench, const PadId& pad) {
  if (const auto card = card_of(bench, pad.arg)) return card_view(bench, *card);
  MaterialView all;
  all.pad = pad;
  all.kind = session::CardKind::pigment;
  all.next = {session::Unit::g, 0};
  all.corrects = corrects_material(bench);
  all.colour = session::colour_of(*bench.folded);
  for (const session::Card& card : pigments_of(bench)) {
    const MaterialView one = card_view(bench, card);
    if (one.grams) all.grams = all.grams.value_or(0) + *one.grams;
    ++all.several;
  }
  return all;
}

PassView::Next pad_of(session::Stage stage) {
  switch (stage) {
  case session::Stage::wetting_out: return PassView::wet_out;
  case session::Stage::mulling: return PassView::mull;
  case session::Stage::resting: return PassView::scrape;
  }
  return PassView::none;
}

PassView pass_view(const Bench& bench, const session::Batch& batch) {
  PassView p;
  const auto passes = std::count_if(batch.passes.begin(), batch.passes.end(), [](const auto& x) {
    return x.stage == session::Stage::mulling;
  });
  const session::Pass* pass = running(batch);
  p.number = pass ? pass->number : static_cast<int>(passes) + 1;
  if (pass) {
    p.running = pass->stage;
    p.seconds = batch.clock - pass->start;
  }
  const bool wets = pass && pass->stage == session::Stage::wetting_out;
  p.target_s = wets ? session::wetted_out_s : bench.mulling.pass_s;
  if (batch.progress != session::Progress::open)
    p.next = PassView::none;
  else
    p.next = pad_of(next_stage(batch));
  return p;
}

}

UndoView undo_view(const Bench& bench, const session::Batch* batch) {
  UndoView u;
  const auto target = batch ? undo_target(bench, *batch) : std::nullopt;
  if (target) u.target = target->event;
  u.gives_back = target && target->gives_back;
  u.question = batch && question_stands(bench, target);
  const std::string card = target ? session::cards_named_by(target->event).card : "";
  if (const auto found = card_of(bench, card)) u.card_name = found->name;
  const std::uint64_t lines = bench.sitting.next_n;
  const std::uint64_t kept = bench.saving.confirmed ? *bench.saving.confirmed + 1 : 0;
  u.unsaved = lines > kept ? lines - kept : 0;
  u.saved = lines > 0 && u.unsaved == 0;
  return u;
}

namespace {

std::optional<double> landing(const Bench& bench, const session::Batch& batch) {
  if (!bench.touch.press || bench.touch.press->slid ||
      bench.touch.press->pad.kind != SlabPad::add || !batch.standing.flow_now)
    return std::nullopt;
  const auto card = card_of(bench, bench.touch.press->pad.arg);
  const auto mL = card ? mL_of(bench, *card, next_amount(bench, *card)) : std::nullopt;
  if (!mL) return std::nullopt;
  return batch.standing.flow_now->value + *mL / batch.standing.pigment_mL.value;
}

std::optional<double> unlocking(const Bench& bench, const Now& now) {
  const auto& press = bench.touch.press;
  if (!press || press->slid || press->pad.kind != TopBarPad::unlock) return std::nullopt;
  const auto held = static_cast<double>(now.run_ms - press->since_ms);
  return std::clamp(held / unlock_ms, 0.0, 1.0);
}

// Slower towards the end, in what the axis shows: the logarithm.
double gliding(const Glide& glide, double to, const Now& now) {
  const double t =
      std::clamp(static_cast<double>(now.run_ms - glide.since_ms) / glide_ms, 0.0, 1.0);
  const double still = (1 - t) * (1 - t);
  return to * std::pow(glide.from / to, still);
}

LineView line_view(const Bench& bench, const session::Entry& e) {
  LineView v{{MorePad::line, arg_of(e.ref)}, e.at, e.event, "", e.corrected, 0, {}};
  v.offset_min = session::offset_of(bench.offsets, e.ref);
  const std::string card = session::cards_named_by(e.event).card;
  if (const auto found = card_of(bench, card)) v.card_name = found->name;
  return v;
}

std::optional<JarView> jar_view(const session::Batch& batch) {
  const session::Places& places = batch.places;
  const auto jar = places.at.find(session::Place::jar);
  if (jar == places.at.end() || in_hand(places) != session::Place::jar) return std::nullopt;
  const paint::Amount g = paint::grams_of(jar->second.paint, places.bench);
  const double stayed = paint::grams_of(places.on_tools.paint, places.bench).value;
  double all = stayed; // what was poured too
  for (const auto& [place, there] : places.at)
    all += paint::grams_of(there.paint, places.bench).value;
  return JarView{g, stayed > 0 && g.value > 0 ? stayed / all : 0};
}

// Of a run the sum, at the moment of its last drop.
LineView line_view(const Bench& bench, const ListedLine& line) {
  LineView v = line_view(bench, *line.all.front());
  v.pad = line.pad;
  v.took_ms = line.all.front()->at - line.all.back()->at;
  if (line.all.size() == 1) return v;
  auto& sum = std::get<session::Added>(v.event);
  sum.amount = 0;
  for (const session::Entry* e : line.all) {
    sum.amount += std::get<session::Added>(e->event).amount;
    v.corrected |= e->corrected;
  }
  return v;
}

void add_materials(const Bench& bench, const MaterialsPanel& panel, SlabView& v) {
  const auto pads = material_pads(bench);
  for (const session::Card& card : materials_of_page(bench, panel)) {
    MaterialView m = card_view(bench, card);
    m.has_pad = panel.why == MaterialsPanel::choose &&
                std::find(pads.begin(), pads.end(), m.pad) != pads.end();
    if (panel.why == MaterialsPanel::was) m.pad.kind = MorePad::it_was;
    if (panel.why == MaterialsPanel::choose) m.pad.kind = MorePad::on_pad;
    v.cards.push_back(std::move(m));
  }
}

// What the seldom wanted panels show.
void add_panel(const Bench& bench, SlabView& v) {
  v.in_jar = lies(bench, session::Place::jar);
  if (is_open<AmountsPanel>(bench.panel))
    if (const auto dropper = card_of(bench, dropper_in_hand(bench))) v.dropper = dropper->name;
  if (is_open<DropperPanel>(bench.panel)) v.dropper_found = dropper_found(bench);
  if (const auto* lines = std::get_if<LinesPanel>(&bench.panel))
    for (const ListedLine& line : lines_listed(bench, *lines))
      v.lines.push_back(line_view(bench, line));
  if (const auto* materials = std::get_if<MaterialsPanel>(&bench.panel))
    add_materials(bench, *materials, v);
  if (const session::Entry* chosen = line_chosen(bench);
      chosen && is_open<LinePanel>(bench.panel)) {
    v.lines.push_back(line_view(bench, *chosen));
    v.line_has_amount = amount_in(chosen->event).has_value();
    v.doubt = doubt_about(bench, *chosen);
  }
  if (is_open<PaintsPanel>(bench.panel))
    for (const OtherPaint& p : bench.paints)
      v.paints.push_back(
          {{MorePad::paint_of, p.batch}, p.card.name, pigment_of(p.card).colour, p.place, p.grams});
}

// Pigment that is not there is not advised.
void keep_to_jar(const Bench& bench, Advice& advice) {
  for (const Advice::Pigment& p : advice.pigments) {
    const session::Card* card = shelf_card(bench, p.card);
    const auto left = card ? left_of(bench, *card) : std::nullopt;
    if (left && *left < p.g) return advice.pigments.clear();
  }
}

// Binder that is planned beyond last time's, since that paint rubbed off: said once it is right, as
// until then the advice leads there.
void add_binder_to_come(const session::Batch& batch, const Measures& of, SlabView& v) {
  if (!v.planned_g || v.advice.kind != Advice::there) return;
  const double g = *v.planned_g - batch.standing.binder_g.value, mL = g / of.g_per_mL;
  if (!(mL > of.drop_mL) || *v.planned_g < v.last_time_g.value_or(0)) return;
  for (const session::Total& t : batch.totals)
    if (t.card.kind() == session::CardKind::binder)
      return v.to_come.push_back({t.card.kind(), t.card.name, g, tapped(mL, of), true});
}

// As much as last time, or as the plan has it.
bool is_binder_in(const session::Batch& batch, const Measures& of, const SlabView& v) {
  const double drop_g = of.drop_mL * of.g_per_mL;
  for (const auto& in_all : {v.planned_g, v.by_recipe_g, v.last_time_g})
    if (in_all) return batch.standing.binder_g.value >= *in_all - drop_g;
  return false;
}

// Where water is asked for and nothing is in that softens: that loosens as well. At the end it
// would make paint that was right too loose.
void soften_in_place_of_water(SlabView& v, double water_mL) {
  const std::optional<Softening>& s = v.softening;
  if (!s || s->name.empty() || !v.advice.water || !(water_mL > 0)) return;
  const double mL = std::min(water_mL, s->mL);
  ToComeView one{s->kind, s->name, std::nullopt, mL < s->mL ? tapped(mL, s->of) : s->amount};
  one.first = true;
  one.mL = mL;
  v.to_come.push_back(std::move(one));
}

SlabView slab_view(const Bench& bench, const Now& now) {
  SlabView v;
  v.panel = bench.panel;
  v.amount = bench.amount;
  v.locked = bench.locked;
  v.unlocking = unlocking(bench, now);
  v.save_failure = bench.saving.failure;
  v.saved_elsewhere = !bench.saving.fallback.empty();
  v.number = number_view(bench);
  v.undo = undo_view(bench, bench.folded ? &*bench.folded : nullptr);
  v.notice = bench.notice;
  if (!bench.folded) return v;
  const session::Batch& batch = *bench.folded;
  if (const auto* found = std::get_if<FoundPanel>(&bench.panel))
    v.away_ms = now.wall_ms - found->since_ms;
  for (const PadId& pad : material_pads(bench)) v.materials.push_back(material_view(bench, pad));
  if (is_open<PigmentsPanel>(bench.panel))
    for (const session::Card& card : pigments_of(bench))
      v.pigments.push_back(card_view(bench, card));
  add_panel(bench, v);
  v.pass = pass_view(bench, batch);
  v.dot = session::last_dot(batch);
  v.last_trouble = session::last_trouble(batch);
  v.trail = trail_view(batch);
  add_offset(bench, v.trail);
  if (bench.expected.answer) v.trail.band = band_as_told(batch, *bench.expected.answer);
  v.trail.from = std::max(0.0, batch.clock - slab_window_s);
  v.trail.whole = false;
  if (!bench.photos.there) v.trail.photos.clear();
  v.trail.ghost = bench.earlier.ghost;
  v.last_time_g = made_in_all(bench);
  constexpr double alike = 0.02;
  const double planned_g = planned_in_all(bench).g;
  if (batch.plan && !batch.plan->of.recipe.empty()) {
    v.by_recipe_g = planned_g > 0 ? std::optional(planned_g) : std::nullopt;
    v.last_time_g.reset();
  } else if (planned_g > 0 &&
             (!v.last_time_g || std::abs(planned_g - *v.last_time_g) > alike * planned_g)) {
    v.planned_g = planned_g;
  }
  v.softening = softening_of_slab(bench);
  v.trail.landing = landing(bench, batch);
  if (bench.glide && v.trail.now) v.trail.now = gliding(*bench.glide, *v.trail.now, now);
  v.ratio = batch.standing.binder_ratio;
  const Measures measures = measures_of_binder(bench);
  v.ratio_decimals =
      paint::decimals_to_step(measures.drop_mL / batch.standing.pigment_g.value * 10).value_or(3);
  const Known known = known_of(bench);
  v.advice = advise(batch, bench.expected.answer, measures, known);
  keep_to_jar(bench, v.advice);
  if (const auto* remedy = std::get_if<RemedyPanel>(&bench.panel))
    v.remedy = remedy_of(remedy->of, batch, measures, known, v.advice.kind);
  if (batch.progress == session::Progress::open) v.portions = bench.earlier.portions;
  v.smooth = v.advice.specks == SpecksStay::coarse || v.advice.specks == SpecksStay::as_it_is ||
             !is_known_rough(smooth_state(batch, known.mulling_left, known.pass_s));
  v.flows_right = flows_right(batch) && v.advice.kind != Advice::give_back;
  v.to_come = to_come(bench);
  add_binder_to_come(batch, measures, v);
  put_first(v.to_come, v.advice, is_binder_in(batch, measures, v));
  if (first_mL(v.to_come) <= 0) soften_in_place_of_water(v, advised_mL(v.advice, measures, known));
  const double first = first_mL(v.to_come);
  const double mL = first > 0 ? first : advised_mL(v.advice, measures, known);
  if (mL > 0 && batch.standing.flow_now)
    v.trail.next = batch.standing.flow_now->value + mL / batch.standing.pigment_mL.value;
  v.dried_mL = batch.dried_mL;
  v.jar = jar_view(batch);
  constexpr double some_g = 0.005; // less than half a drop
  // The mask is on before the powder is out.
  v.dust = is_dusty(batch) || std::any_of(v.to_come.begin(), v.to_come.end(), pigment_to_come);
  v.flammable = batch.standing.alcohol_g.value > some_g;
  v.progress = batch.progress;
  v.warnings = batch.warnings;
  v.room_guessed = batch.room_guessed;
  v.damaged = batch.damaged;
  v.newer = batch.newer;
  return v;
}

TopBarView top_bar_view(const Bench& bench, const Now& now) {
  TopBarView s;
  s.screen = bench.screen == Screen::binder   ? Screen::shelf
             : bench.screen != Screen::photos ? bench.screen
             : bench.photos.from_slab         ? Screen::slab
                                              : Screen::book;
  s.night = bench.night;
  s.sound = bench.tablet.sound;
  s.due = due_now(bench, now);
  if (bench.folded) {
    s.batch_name = bench.folded->name;
    s.batch_colour = session::colour_of(*bench.folded);
    s.batch_swatch = bench.folded->swatch.has_value();
  }
  const std::int64_t minutes = now.wall_ms / 60000 + now.utc_offset_min;
  s.hour = static_cast<int>((minutes / 60 % 24 + 24) % 24);
  s.minute = static_cast<int>((minutes % 60 + 60) % 60);
  return s;
}

}

bool is_over(const PassView& pass) {
  return pass.running == session::Stage::mulling && pass.target_s > 0 &&
         pass.seconds >= pass.target_s;
}

namespace {

ScreenView page_view(const Bench& bench) {
  return std::visit(
      words::Overloaded{[&](const ListPage&) -> ScreenView { return book_view(bench); },
                        [&](const BatchPage&) -> ScreenView { return book_view(bench); },
                        [&](const ChoicePage&) -> ScreenView { return book_view(bench); },
                        [&](const ComparePage& p) -> ScreenView { return compare_view(bench, p); },
                        [&](const RangesPage& p) -> ScreenView { return ranges_view(bench, p); },
                        [&](const StoryPage& p) -> ScreenView { return story_view(bench, p); }},
      bench.book.page);
}

ScreenView screen_view(const Bench& bench, const Now& now) {
  switch (bench.screen) {
  case Screen::today: return today_view(bench, now);
  case Screen::shelf: return shelf_view(bench, now);
  case Screen::plan: return plan_view(bench, now);
  case Screen::slab: return slab_view(bench, now);
  case Screen::pans: return pans_view(bench, now);
  case Screen::book: return page_view(bench);
  case Screen::tablet: return tablet_view(bench);
  case Screen::binder: return binder_view(bench, now);
  case Screen::photos: return photos_view(bench);
  }
  return {};
}

}

View view(const Bench& bench, const Now& now) {
  View v;
  v.layout = layout(bench);
  v.top_bar = top_bar_view(bench, now);
  v.utc_offset_min = now.utc_offset_min;
  v.pressed = bench.keys.flash;
  if (bench.touch.press && !bench.touch.press->slid) v.pressed = bench.touch.press->pad;
  v.focus = bench.keys.focus;
  v.no_pictures = bench.photos.no_pictures;
  v.screen = screen_view(bench, now);
  return v;
}

}

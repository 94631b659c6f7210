#include "bench/pad.hpp"

#include "bench/pads_binder.hpp"
#include "bench/pads_book.hpp"
#include "bench/pads_choice.hpp"
#include "bench/pads_more.hpp"
#include "bench/pads_number.hpp"
#include "bench/pads_pans.hpp"
#include "bench/pads_photos.hpp"
#include "bench/pads_plan.hpp"
#include "bench/pads_shared.hpp"
#include "bench/pads_shelf.hpp"
#include "bench/pads_slab.hpp"
#include "bench/pads_tablet.hpp"
#include "bench/pads_today.hpp"
#include "bench/pads_top_bar.hpp"
#include "words/lists.hpp"

namespace bench {

namespace {

struct Named {
  std::string_view name;
};

template <class Pad>
using Names = words::EnumTable<Pad, Named>;

constexpr Names<TopBarPad> top_bar_pads{{{TopBarPad::today, {"today"}},
                                         {TopBarPad::shelf, {"shelf"}},
                                         {TopBarPad::plan, {"plan"}},
                                         {TopBarPad::slab, {"slab"}},
                                         {TopBarPad::pans, {"pans"}},
                                         {TopBarPad::book, {"book"}},
                                         {TopBarPad::tablet, {"tablet"}},
                                         {TopBarPad::sound, {"sound"}},
                                         {TopBarPad::night, {"night"}},
                                         {TopBarPad::wipe, {"wipe"}},
                                         {TopBarPad::unlock, {"unlock"}}}};
constexpr Names<SharedPad> shared_pads{{{SharedPad::undo, {"undo"}},
                                        {SharedPad::leave, {"leave"}},
                                        {SharedPad::search, {"search"}},
                                        {SharedPad::clear, {"clear"}},
                                        {SharedPad::page_back, {"page_back"}},
                                        {SharedPad::page_on, {"page_on"}},
                                        {SharedPad::to_pans, {"to_pans"}},
                                        {SharedPad::to_plan, {"to_plan"}},
                                        {SharedPad::dot_photo, {"dot_photo"}}}};
constexpr Names<TodayPad> today_pads{{{TodayPad::due, {"due"}},
                                      {TodayPad::again, {"again"}},
                                      {TodayPad::new_paint, {"new_paint"}},
                                      {TodayPad::have, {"have"}},
                                      {TodayPad::binder, {"my_binder"}},
                                      {TodayPad::bank_card, {"bank_card"}},
                                      {TodayPad::hand, {"hand_on"}}}};
constexpr Names<SlabPad> slab_pads{{{SlabPad::add, {"add"}},
                                    {SlabPad::pigments, {"pigments"}},
                                    {SlabPad::another, {"another"}},
                                    {SlabPad::more, {"more"}},
                                    {SlabPad::bottle, {"bottle"}},
                                    {SlabPad::pass, {"pass"}},
                                    {SlabPad::gather, {"gather"}},
                                    {SlabPad::back_on_slab, {"back_on_slab"}},
                                    {SlabPad::close, {"close"}},
                                    {SlabPad::dot, {"dot"}},
                                    {SlabPad::trouble, {"trouble"}},
                                    {SlabPad::felt, {"felt"}}}};
constexpr Names<ChoicePad> choice_pads{{{ChoicePad::amount, {"amount"}},
                                        {ChoicePad::dropper, {"dropper"}},
                                        {ChoicePad::bottle_of, {"bottle_of"}},
                                        {ChoicePad::lost_count, {"lost_count"}},
                                        {ChoicePad::keep_dropper, {"keep_dropper"}},
                                        {ChoicePad::specks, {"specks"}},
                                        {ChoicePad::trouble_is, {"trouble_is"}}}};
constexpr Names<MorePad> more_pads{{{MorePad::weigh_paint, {"weigh_paint"}},
                                    {MorePad::to_jar, {"to_jar"}},
                                    {MorePad::from_jar, {"from_jar"}},
                                    {MorePad::spilt, {"spilt"}},
                                    {MorePad::other_paint, {"other_paint"}},
                                    {MorePad::paint_of, {"paint_of"}},
                                    {MorePad::lines, {"lines"}},
                                    {MorePad::earlier, {"earlier"}},
                                    {MorePad::later, {"later"}},
                                    {MorePad::run, {"run"}},
                                    {MorePad::line, {"line"}},
                                    {MorePad::other_amount, {"other_amount"}},
                                    {MorePad::other_material, {"other_material"}},
                                    {MorePad::it_was, {"it_was"}},
                                    {MorePad::materials, {"materials"}},
                                    {MorePad::more_materials, {"more_materials"}},
                                    {MorePad::choose_pads, {"choose_pads"}},
                                    {MorePad::on_pad, {"on_pad"}},
                                    {MorePad::five_earlier, {"five_earlier"}},
                                    {MorePad::take_back, {"take_back"}},
                                    {MorePad::it_is, {"it_is"}},
                                    {MorePad::was_meant, {"was_meant"}},
                                    {MorePad::found, {"found"}},
                                    {MorePad::room, {"room"}}}};
constexpr Names<NumberPad> number_pads{{{NumberPad::digit, {"digit"}},
                                        {NumberPad::point, {"point"}},
                                        {NumberPad::erase, {"erase"}},
                                        {NumberPad::enter, {"enter"}}}};
constexpr Names<PlanPad> plan_pads{{{PlanPad::pigment, {"pigment"}},
                                    {PlanPad::binder, {"binder"}},
                                    {PlanPad::weigh, {"weigh"}},
                                    {PlanPad::celsius, {"celsius"}},
                                    {PlanPad::humidity, {"humidity"}},
                                    {PlanPad::parts, {"parts"}},
                                    {PlanPad::by_volume, {"by_volume"}},
                                    {PlanPad::want, {"want"}},
                                    {PlanPad::pan_size, {"pan_size"}},
                                    {PlanPad::cautions, {"cautions"}},
                                    {PlanPad::cautions_read, {"cautions_read"}},
                                    {PlanPad::name, {"name"}},
                                    {PlanPad::begin, {"begin"}},
                                    {PlanPad::go_on, {"go_on"}},
                                    {PlanPad::another_pigment, {"another_pigment"}},
                                    {PlanPad::recipes, {"recipes"}},
                                    {PlanPad::recipe, {"recipe"}},
                                    {PlanPad::all_others, {"all_others"}},
                                    {PlanPad::say_in, {"say_in"}},
                                    {PlanPad::spoon, {"spoon"}},
                                    {PlanPad::other_binders, {"other_binders"}},
                                    {PlanPad::fewer, {"fewer"}},
                                    {PlanPad::more, {"more_of_it"}},
                                    {PlanPad::keep_recipe, {"keep_recipe"}}}};
constexpr Names<ShelfPad> shelf_pads{{{ShelfPad::kind_of, {"kind_of"}},
                                      {ShelfPad::card, {"card"}},
                                      {ShelfPad::new_card, {"new_card"}},
                                      {ShelfPad::kept_away, {"kept_away"}},
                                      {ShelfPad::put_away, {"put_away"}},
                                      {ShelfPad::bring_back, {"bring_back"}},
                                      {ShelfPad::fact, {"fact"}},
                                      {ShelfPad::says, {"says"}},
                                      {ShelfPad::choice, {"choice"}},
                                      {ShelfPad::card_done, {"card_done"}},
                                      {ShelfPad::caution, {"caution"}},
                                      {ShelfPad::more_cautions, {"more_cautions"}},
                                      {ShelfPad::cautions_chosen, {"cautions_chosen"}},
                                      {ShelfPad::others, {"others"}},
                                      {ShelfPad::tick, {"tick"}},
                                      {ShelfPad::own, {"own"}},
                                      {ShelfPad::own_done, {"own_done"}},
                                      {ShelfPad::make, {"make"}},
                                      {ShelfPad::change, {"change"}},
                                      {ShelfPad::batch_of, {"batch_of"}},
                                      {ShelfPad::chart, {"chart"}},
                                      {ShelfPad::hue, {"hue"}},
                                      {ShelfPad::shade, {"shade"}},
                                      {ShelfPad::jars, {"jars"}},
                                      {ShelfPad::jar_g, {"jar_g"}},
                                      {ShelfPad::jar_price, {"jar_price"}},
                                      {ShelfPad::jar_says, {"jar_says"}},
                                      {ShelfPad::jar_in, {"jar_in"}},
                                      {ShelfPad::jar_back, {"jar_back"}},
                                      {ShelfPad::left_g, {"left_g"}},
                                      {ShelfPad::to_card, {"to_card"}},
                                      {ShelfPad::make_binder, {"make_binder"}},
                                      {ShelfPad::strength, {"strength"}},
                                      {ShelfPad::binder_label, {"binder_label"}},
                                      {ShelfPad::as_swatch, {"as_swatch"}},
                                      {ShelfPad::as_catalogue, {"as_catalogue"}}}};
constexpr Names<BookPad> book_pads{{{BookPad::batch, {"batch"}},
                                    {BookPad::to_list, {"to_list"}},
                                    {BookPad::ranges, {"ranges"}},
                                    {BookPad::range_of, {"range_of"}},
                                    {BookPad::note_before, {"note_before"}},
                                    {BookPad::note_after, {"note_after"}},
                                    {BookPad::set_aside, {"set_aside"}},
                                    {BookPad::take_up, {"take_up"}},
                                    {BookPad::make_again, {"make_again"}},
                                    {BookPad::compare, {"compare"}},
                                    {BookPad::note, {"note"}},
                                    {BookPad::note_text, {"note_text"}},
                                    {BookPad::keep, {"keep"}},
                                    {BookPad::rename, {"rename"}},
                                    {BookPad::name_text, {"name_text"}},
                                    {BookPad::discard, {"discard"}},
                                    {BookPad::have_back, {"have_back"}},
                                    {BookPad::discarded, {"discarded"}},
                                    {BookPad::by_colour, {"by_colour"}},
                                    {BookPad::list_paper, {"list_paper"}},
                                    {BookPad::mark, {"mark"}},
                                    {BookPad::paint_list, {"paint_list"}},
                                    {BookPad::swatch_card, {"swatch_card"}},
                                    {BookPad::keep_recipe, {"keep_as_recipe"}},
                                    {BookPad::paper, {"paper"}},
                                    {BookPad::sheet, {"sheet"}},
                                    {BookPad::labels, {"labels"}},
                                    {BookPad::label_line, {"label_line"}},
                                    {BookPad::table, {"table"}},
                                    {BookPad::photos, {"photos"}},
                                    {BookPad::match, {"match"}},
                                    {BookPad::trails, {"trails"}}}};
constexpr Names<PansPad> pans_pads{{{PansPad::pan, {"pan"}},
                                    {PansPad::new_pan, {"new_pan"}},
                                    {PansPad::pour_all, {"pour_all"}},
                                    {PansPad::pour_pan, {"pour_pan"}},
                                    {PansPad::pour_g, {"pour_g"}},
                                    {PansPad::weigh_pan, {"weigh_pan"}},
                                    {PansPad::pan_card, {"pan_card"}},
                                    {PansPad::judge, {"judge"}},
                                    {PansPad::became, {"became"}},
                                    {PansPad::all_pans, {"all_pans"}},
                                    {PansPad::more_pans, {"more_pans"}},
                                    {PansPad::batch, {"other_batch"}},
                                    {PansPad::more_batches, {"more_batches"}},
                                    {PansPad::room, {"room_of_pans"}}}};
constexpr Names<TabletPad> tablet_pads{{{TabletPad::hand, {"hand"}},
                                        {TabletPad::motion, {"motion"}},
                                        {TabletPad::full_screen, {"full_screen"}},
                                        {TabletPad::language, {"language"}},
                                        {TabletPad::card_smaller, {"card_smaller"}},
                                        {TabletPad::card_larger, {"card_larger"}},
                                        {TabletPad::bind, {"bind"}},
                                        {TabletPad::others, {"other_studios"}},
                                        {TabletPad::tell, {"tell"}},
                                        {TabletPad::find_told, {"find_told"}},
                                        {TabletPad::take_told, {"take_told"}},
                                        {TabletPad::leave_told, {"leave_told"}},
                                        {TabletPad::forget_told, {"forget_told"}}}};

constexpr Names<BinderPad> binder_pads{{{BinderPad::recipe, {"recipe_of_binder"}},
                                        {BinderPad::less, {"less_gum"}},
                                        {BinderPad::gum, {"gum"}},
                                        {BinderPad::more, {"more_gum"}},
                                        {BinderPad::measured_in, {"measured_in"}},
                                        {BinderPad::step, {"step"}},
                                        {BinderPad::dose, {"dose"}},
                                        {BinderPad::dose_in, {"dose_in"}},
                                        {BinderPad::keep, {"keep_cold_until"}},
                                        {BinderPad::jar_holds, {"jar_holds"}},
                                        {BinderPad::take_back, {"take_step_back"}},
                                        {BinderPad::give_up, {"give_up"}},
                                        {BinderPad::other, {"other_making"}},
                                        {BinderPad::onto_shelf, {"onto_shelf"}},
                                        {BinderPad::empty_bottle, {"empty_bottle"}},
                                        {BinderPad::bottle, {"weigh_bottle"}},
                                        {BinderPad::dried, {"water_gone"}},
                                        {BinderPad::used, {"was_used"}},
                                        {BinderPad::weaker, {"weaker"}},
                                        {BinderPad::stronger, {"stronger"}},
                                        {BinderPad::put_in, {"put_in"}}}};

constexpr Names<PhotosPad> photos_pads{{{PhotosPad::photo, {"photo"}},
                                        {PhotosPad::add, {"add_photo"}},
                                        {PhotosPad::folder_text, {"photo_folder"}},
                                        {PhotosPad::look, {"look_there"}},
                                        {PhotosPad::choose, {"choose_photo"}},
                                        {PhotosPad::of, {"photo_of"}},
                                        {PhotosPad::region, {"region"}},
                                        {PhotosPad::larger, {"larger_region"}},
                                        {PhotosPad::smaller, {"smaller_region"}},
                                        {PhotosPad::read, {"read_swatch"}},
                                        {PhotosPad::take_away, {"take_photo_away"}},
                                        {PhotosPad::specks, {"specks_on_photo"}},
                                        {PhotosPad::unsay, {"take_word_back"}}}};

template <class Pad>
std::string_view name_in(const Names<Pad>& names, PadKind pad) {
  return names[*pad.as<Pad>()].name;
}

template <class Pad>
std::optional<PadKind> kind_in(const Names<Pad>& names, std::string_view name) {
  const auto pad = names.find(&Named::name, name);
  return pad ? std::optional(PadKind(*pad)) : std::nullopt;
}

std::string_view name_of(PadKind pad) {
  switch (pad.list()) {
  case PadList::top_bar: return name_in(top_bar_pads, pad);
  case PadList::shared: return name_in(shared_pads, pad);
  case PadList::today: return name_in(today_pads, pad);
  case PadList::slab: return name_in(slab_pads, pad);
  case PadList::choice: return name_in(choice_pads, pad);
  case PadList::more: return name_in(more_pads, pad);
  case PadList::number: return name_in(number_pads, pad);
  case PadList::plan: return name_in(plan_pads, pad);
  case PadList::shelf: return name_in(shelf_pads, pad);
  case PadList::book: return name_in(book_pads, pad);
  case PadList::pans: return name_in(pans_pads, pad);
  case PadList::tablet: return name_in(tablet_pads, pad);
  case PadList::binder: return name_in(binder_pads, pad);
  case PadList::photos: return name_in(photos_pads, pad);
  }
  return "";
}

std::optional<PadKind> kind_named(PadList list, std::string_view name) {
  switch (list) {
  case PadList::top_bar: return kind_in(top_bar_pads, name);
  case PadList::shared: return kind_in(shared_pads, name);
  case PadList::today: return kind_in(today_pads, name);
  case PadList::slab: return kind_in(slab_pads, name);
  case PadList::choice: return kind_in(choice_pads, name);
  case PadList::more: return kind_in(more_pads, name);
  case PadList::number: return kind_in(number_pads, name);
  case PadList::plan: return kind_in(plan_pads, name);
  case PadList::shelf: return kind_in(shelf_pads, name);
  case PadList::book: return kind_in(book_pads, name);
  case PadList::pans: return kind_in(pans_pads, name);
  case PadList::tablet: return kind_in(tablet_pads, name);
  case PadList::binder: return kind_in(binder_pads, name);
  case PadList::photos: return kind_in(photos_pads, name);
  }
  return std::nullopt;
}

}

std::string name_of(const PadId& pad) {
  const std::string name(name_of(pad.kind));
  return pad.arg.empty() ? name : name + " " + pad.arg;
}

std::optional<PadId> pad_named(std::string_view text) {
  const std::size_t space = text.find(' ');
  const std::string_view head = text.substr(0, space);
  const std::string_view arg = space == std::string_view::npos ? "" : text.substr(space + 1);
  for (const PadList list : words::all_of<PadList>)
    if (const auto kind = kind_named(list, head)) return PadId{*kind, std::string(arg)};
  return std::nullopt;
}

}

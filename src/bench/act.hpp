// What each pad does. Split by screen; act.cpp chooses.
#pragma once

#include "bench/bench.hpp"

namespace bench {

enum class BinderPad;
enum class MorePad;
enum class ShelfPad;

void act(Bench& bench, const PadId& pad, const Now& now, Effects& effects);

void act_on_slab(Bench& bench, const PadId& pad, const Now& now, Effects& effects);
void act_on_more(Bench& bench, MorePad pad, const std::string& arg, const Now& now,
                 Effects& effects);
// Of the line that is open: what it should have said.
void correct_material(Bench& bench, const std::string& card, const Now& now, Effects& effects);
void act_on_today(Bench& bench, const PadId& pad, const Now& now, Effects& effects);
void act_on_plan(Bench& bench, const PadId& pad, const Now& now, Effects& effects);
void act_on_shelf(Bench& bench, const PadId& pad, const Now& now, Effects& effects);
void act_on_pans(Bench& bench, const PadId& pad, const Now& now, Effects& effects);
void act_on_book(Bench& bench, const PadId& pad, const Now& now, Effects& effects);
void act_on_tablet(Bench& bench, const PadId& pad, const Now& now, Effects& effects);
void act_on_binder(Bench& bench, const PadId& pad, const Now& now, Effects& effects);
void act_on_photos(Bench& bench, const PadId& pad, const Now& now, Effects& effects);
void act_on_number(Bench& bench, const PadId& pad, const Now& now, Effects& effects);

// Asks once after half an hour in which nobody touched wet paint on the slab.
void ask_how_found(Bench& bench, const Now& now);

// Offers the latest batch on Plan if it was left open on the slab a few days ago at most.
void offer_to_go_on(Bench& bench, const Now& now);
// Takes up that batch again: a closed one by withdrawing what closed it.
void take_up(Bench& bench, const std::string& batch, const Now& now, Effects& effects);

// From the trail that shows it, which the way back leads to.
void open_photo_of_trail(Bench& bench, const std::string& key, Effects& effects);
// Of the Book's batch, or of that on the slab.
void open_photos(Bench& bench, const std::string& batch, bool from_slab, Effects& effects);
void take_dropped(Bench& bench, const Dropped& dropped, const Now& now, Effects& effects);
void take_listed(Bench& bench, PicturesListed listed);
void take_seen(Bench& bench, const ImageSeen& seen);
void take_kept(Bench& bench, const PhotoKept& kept, const Now& now, Effects& effects);
void take_read(Bench& bench, const SwatchRead& read, const Now& now, Effects& effects);
// A finger that lies on one of the regions, or moves one: true, and the pads hear nothing of it.
bool move_region(Bench& bench, const Pointer& pointer);

// A new plan, of this pigment.
void plan_pigment(Bench& bench, const std::string& card, const Now& now);

void go_to(Bench& bench, Screen screen);
void to_all_batches(Bench& bench); // of the Book
// On a batch's page, before anything else is done in the Book or it is left.
void keep_what_is_typed(Bench& bench, const Now& now, Effects& effects);
// Records the open card, if it was changed; false, and says why, where it cannot be kept so.
bool keep_card(Bench& bench, const Now& now, Effects& effects);
// Likewise; a new card on which nothing was written is none.
bool leave_card(Bench& bench, const Now& now, Effects& effects);
// What is written on the open card.
void say_on_card(Bench& bench, const std::string& which, const std::string& text);
// Of the open card; says why it cannot be that.
words::Result<double> set_fact(Bench& bench, const std::string& which, double value);

// What is written of the jar that is being entered, and its numbers.
void say_on_jar(Bench& bench, const std::string& which, const std::string& text);
words::Result<double> set_on_jar(Bench& bench, const PadId& target, double value, const Now& now,
                                 Effects& effects);
void act_on_jars(Bench& bench, ShelfPad pad, const Now& now, Effects& effects);
void open_jars(Bench& bench, const Now& now);

// Of binder that is made, and of its jar. The fault is that of what no making has so much, or so
// little, of.
std::optional<words::Error> fault_of_making(const Bench& bench, const PadId& target, double value);
words::Result<double> set_on_binder(Bench& bench, const PadId& target, double value, const Now& now,
                                    Effects& effects);
void act_on_strength(Bench& bench, BinderPad pad, const Now& now, Effects& effects);
void take_back_of_jar(Bench& bench, const Now& now, Effects& effects);
words::Result<double> set_on_bottle(Bench& bench, const PadId& target, double value);

// Of the pan that is meant: what it took, or weighs.
words::Result<double> set_on_pan(Bench& bench, const PadId& target, double g, const Now& now,
                                 Effects& effects);

void open_number(Bench& bench, PadId target);
void say_error(Bench& bench, words::Error error, const Now& now);

}

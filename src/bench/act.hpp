// What each pad does. Split by screen; act.cpp chooses.
#pragma once

#include "bench/bench.hpp"

namespace bench {

void act(Bench& bench, const PadId& pad, const Now& now, Effects& effects);

void act_on_slab(Bench& bench, const PadId& pad, const Now& now, Effects& effects);
void act_on_plan(Bench& bench, const PadId& pad, const Now& now, Effects& effects);
void act_on_shelf(Bench& bench, const PadId& pad, const Now& now, Effects& effects);
void act_on_pans(Bench& bench, const PadId& pad, const Now& now, Effects& effects);
void act_on_book(Bench& bench, const PadId& pad, const Now& now, Effects& effects);
void act_on_tablet(Bench& bench, const PadId& pad, Effects& effects);
void act_on_number(Bench& bench, const PadId& pad, const Now& now, Effects& effects);

void go_to(Bench& bench, Screen screen);
void open_number(Bench& bench, PadId target);
void say_error(Bench& bench, words::Error error, const Now& now);

}

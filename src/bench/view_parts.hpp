// The pieces that view() is put together from.
#pragma once

#include "bench/record.hpp"
#include "bench/view.hpp"

namespace bench {

std::optional<NumberView> number_view(const Bench& bench);
inline constexpr session::Clock slab_window_s = 900; // that the trail shows there
// No longer than it lay on the slab.
TrailView trail_at_slab(const session::Batch& batch);
void add_offset(const Bench& bench, TrailView& trail);
TodayView today_view(const Bench& bench, const Now& now);
PlanView plan_view(const Bench& bench, const Now& now);
BookView book_view(const Bench& bench);
CompareView compare_view(const Bench& bench, const ComparePage& page);
RangesView ranges_view(const Bench& bench, const RangesPage& page);
StoryView story_view(const Bench& bench, const StoryPage& page);
UndoView undo_view(const Bench& bench, const session::Batch* batch);
ShelfView shelf_view(const Bench& bench, const Now& now);
RecipeView recipe_view(const Bench& bench, const session::Card& card); // but for what it made
// Of one batch, by their numbers.
std::vector<PansView::Pan> pans_seen(const session::Batch& batch, const Now& now);
PansView pans_view(const Bench& bench, const Now& now);
TabletView tablet_view(const Bench& bench);
PhotosView photos_view(const Bench& bench);
BinderView binder_view(const Bench& bench, const Now& now);

}

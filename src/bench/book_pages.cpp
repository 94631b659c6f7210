#include "bench/book_pages.hpp"

#include "words/lists.hpp"

namespace bench {

using words::Overloaded;

std::string batch_of(const BookPage& page) {
  return std::visit(Overloaded{[](const ListPage&) { return std::string(); },
                               [](const BatchPage& p) { return p.batch; },
                               [](const ChoicePage& p) { return p.of.batch; },
                               [](const ComparePage& p) { return p.of.batch; },
                               [](const RangesPage&) { return std::string(); },
                               [](const StoryPage&) { return std::string(); }},
                    page);
}

const ListPage* marking_of(const BookPage& page) {
  const auto* list = std::get_if<ListPage>(&page);
  return list && list->marking ? list : nullptr;
}

const RangesPage* ranges_of(const BookPage& page) {
  if (const auto* story = std::get_if<StoryPage>(&page)) return &story->ranges;
  return std::get_if<RangesPage>(&page);
}

const PigmentStory* story_of(const BookPage& page) {
  const auto* story = std::get_if<StoryPage>(&page);
  return story ? &story->story : nullptr;
}

}

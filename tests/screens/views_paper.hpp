// What Book and a card say of what was put on paper.
#pragma once

#include "screens/views.hpp"

namespace views {

// Of the batch's page as it stands.
void add_papers(std::vector<Case>& out, const bench::Bench& bench, const bench::BookView& batch,
                const std::string& on);
void add_papers_of_card(std::vector<Case>& out, bench::Size mm, bench::Hand hand,
                        const std::string& on);

}

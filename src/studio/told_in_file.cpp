#include "studio/told_in_file.hpp"

#include "words/studio_says.hpp"

namespace studio {

words::Result<paint::ToldRange> told_in_file(const std::string& name, std::string_view bytes) {
  auto told = paint::told_from(bytes);
  const auto fault = told ? paint::implausible(*told) : std::optional(told.error());
  if (fault)
    return words::failure(words::StudioSay::told_file_refused, {name, words::Inner(*fault)});
  return told;
}

}

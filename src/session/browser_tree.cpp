#include "session/tree.hpp"

namespace session {

words::Result<Tree> read_tree(std::string_view line) {
  auto object = read_object(line);
  if (!object) return tl::make_unexpected(object.error());
  return tree_of(*std::move(object), line);
}

}

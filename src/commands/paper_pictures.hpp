// The photos of a page that is handed on, which takes them along wherever it goes.
#pragma once

#include "commands/picture_home.hpp"

namespace commands {

// Each picture that the page names as it lies in the studio ("photos/9f86d081….jpg") is put into
// the page, as small as a thumbnail; in place of one that makes none, or is not
// the photo that was taken, stands why.
std::string with_pictures(const std::string& html, const PictureHome& home);

}

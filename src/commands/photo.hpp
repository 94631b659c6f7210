// Keeps a photo with a batch, in a session of its own.
#pragma once

#include "disk/faulty.hpp"
#include "session/event.hpp"
#include "session/reader.hpp"
#include "studio/studio.hpp"
#include "words/error.hpp"

#include <iosfwd>
#include <optional>
#include <string>
#include <vector>

namespace commands {

struct PhotoToKeep {
  std::string bytes; // the picture's
  std::string batch; // as for find_batch
  session::PhotoOf of = session::PhotoOf::swatch;
  std::optional<session::Measured> measured; // of a swatch that was read
  studio::Path home, fallback;
  std::optional<disk::Fault> fault; // of the studio's disk
};

// Prints the file it is kept as. Returns the exit status: 1, with a sentence on `err`, where the
// disk failed: then the photo may be there and no line names it. Errors: those of
// studio::photo_from and find_batch; then nothing was written.
words::Result<int> keep_photo(const PhotoToKeep& wanted, std::ostream& out, std::ostream& err);

// The swatch's photo that was kept last with a batch and stands.
std::optional<session::Photo> last_swatch(const std::vector<session::Log>& logs,
                                          const std::string& batch);

}

#include "words/photos_says.hpp"

namespace words {

std::string_view english(PhotosSay id) {
  using Say = PhotosSay;
  switch (id) {
  case Say::title: return "Photos of {0}";
  case Say::to_batch: return "to the batch";
  case Say::to_all: return "all photos";
  case Say::none:
    return "No photo is kept with this batch yet. Drop one on this window, or take one from a "
           "folder.";
  case Say::none_picks:
    return "No photo is kept with this batch yet. Take one with the camera, or choose one that is "
           "on this device.";
  case Say::hint: return "Photograph swatches in daylight, with bare paper all around them.";
  case Say::add: return "take one from a folder";
  case Say::add_picks: return "take a photo, or choose one";
  case Say::folder: return "folder with photos";
  case Say::look: return "look there";
  case Say::looking: return "looking";
  case Say::folder_empty: return "There is no JPEG and no PNG in “{0}”.";
  case Say::folder_none: return "There is no folder “{0}”. Type where your photos are, from / on.";
  case Say::folder_unread: return "{1}: the folder “{0}” cannot be read.";
  case Say::folder_count: return "{0} pictures, newest first";
  case Say::folder_count_most: return "the newest {0} of {1} pictures: the rest is not listed";
  case Say::of_what: return "What is it a photo of?";
  case Say::of_what_one_more: return "One more is waiting.";
  case Say::of_what_more: return "{0} more are waiting.";
  case Say::leave_out: return "leave it out";
  case Say::of_swatch: return "swatch";
  case Say::of_dot: return "dot";
  case Say::of_pan: return "pan";
  case Say::of_slab: return "slab";
  case Say::reading: return "one moment";
  case Say::not_kept: return "keeping it";
  case Say::read: return "read it";
  case Say::read_again: return "read it again";
  case Say::larger: return "larger";
  case Say::smaller: return "smaller";
  case Say::move_paint: return "move paint";
  case Say::move_paper: return "move paper";
  case Say::take_away: return "take it away";
  case Say::unsay: return "take my word back";
  case Say::paint: return "paint";
  case Say::paper: return "bare paper";
  case Say::paint_at_fault: return "not this paint";
  case Say::paper_at_fault: return "not this paper";
  case Say::see_through: return "Parts of it are see-through: they count as white.";
  case Say::how_to_read:
    return "Lay the paint frame on an even part of the swatch and the others on bare paper beside "
           "it: drag them, or tap the place. Then read it.";
  case Say::no_swatch: return "No swatch is seen on it: lay the frames yourself.";
  case Say::two_swatches:
    return "Two swatches lie on it, and the frame is on one of them: tap the other to read that.";
  case Say::colour: return "L* {0} ± {1}   a* {2} ± {3}   b* {4} ± {5}";
  case Say::what_next: return "Read and kept. If a frame lies wrong, move it.";
  case Say::colour_means: return "beside its paper, under D50; ± is 95 %";
  case Say::untold: return "The colour cannot be told: {0}.";
  case Say::of_none: return "Photos belong to a batch: open one in the Book, or on the slab.";
  case Say::no_batch:
    return "A photo belongs to a batch: open the batch in the Book or on the slab, then drop the "
           "photo again.";
  case Say::is_folder: return "“{0}” is a folder: drop the photo itself.";
  case Say::of_picture: return "{0}: {1}";
  case Say::pad: return "photos";
  case Say::pad_first: return "photo";
  case Say::many: return "{0} photos";
  case Say::specks_seen: return "{0}, as counted on the photo";
  case Say::specks_judged: return "{0}, as you said";
  case Say::specks_not_counted: return "The photo cannot tell how many.";
  case Say::specks_ask:
    return "What do you see? Your word counts; what the photo says is kept beside it.";
  case Say::specks_teach: return "It teaches how long this pigment wants to be mulled.";
  case Say::gone:
    return "The photo’s file is not in the studio any more. Put {0} back from a copy of the "
           "studio, or take the photo away.";
  case Say::changed:
    return "{0} is not the photo that was taken: its bytes differ. Put it back from a copy of the "
           "studio, or take the photo away.";
  case Say::gone_short: return "the file is gone";
  case Say::not_shown_short: return "it cannot be shown";
  case Say::browser_failed: return "this browser could not do it: {0}";
  case Say::browser_full:
    return "there is no room left for it on this device: make some, then tap once more";
  case Say::cannot_keep: return "The photo is not kept: {0}";
  }
  return "";
}

}

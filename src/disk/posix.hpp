// The disk of a computer: a folder, and one thread of its own that writes and reads in it.
//
// Appends that wait together are written together, one write and one force for each file, and
// answered in the order in which they were submitted. Between two files there is no order before
// the answers: whoever needs one file safe before another waits for its answer.
//
// When the program dies. A program ends without warning: killed, or by an exit() deep inside a
// library (Xlib calls it when the display goes away) while the writer is at work. The bytes of one
// batch go out in one write, and they are always whole appends; so what then lies in the file is
// the beginning of what was submitted, cut at worst inside its last piece, and all that was
// confirmed is in it. Two things follow for the owner:
//  - keep the Disk on the stack, not in a static: exit() does not unwind stacks, but it does
//    destroy statics, and the writer would lose what it works on;
//  - wake must touch no static that has a destructor.
#pragma once

#include "disk/disk.hpp"
#include "disk/files.hpp"

#include <functional>

namespace disk {

// Works below root, an absolute path, which must be there: it is never made, so that a drive that
// was pulled out is a failure and not a new empty folder in its place. Every call of `files` is
// made by the one writer thread.
//
// wake is called by the writer thread each time answers have become available, with no lock held;
// it may call the Disk, must not throw, and must live as long as the Disk. It may be empty.
//
// Names are relative, of components that are neither empty nor "." nor "..", without NUL; any
// other is the Failure "name". A file once begun stays open until the Disk goes.
//
// submit() and answers() may be called from any thread. The destructor first writes what was
// submitted, and reads no more; answers not fetched by then are lost. Throws std::system_error
// where the system gives no thread.
std::unique_ptr<Disk> open_disk(std::filesystem::path root, std::unique_ptr<Files> files,
                                std::function<void()> wake);

}

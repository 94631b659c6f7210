// The store of a browser (IndexedDB), as a disk. What was submitted is confirmed when the browser
// says that the transaction is complete, and every transaction asks for strict durability: complete
// then means forced (W3C Indexed Database API 3.0, 2.7.1).
//
// The database "slabside" has two stores. `lines`: one record a line, its key [file, 0, 1, 2 ...],
// its value the line's bytes with their newline, just as a computer has them in that file; of a
// session's first part the second half of the key is the line's own n. The records of a file, one
// after the other, are the file. `files`: how many records and bytes that are, put in the same
// transaction. A transaction is there whole or not at all, so no line is ever torn.
//
// A browser may throw all of it away: when space runs out, after weeks without a visit, or because
// somebody cleared its data. What becomes of that while the page is open: the page remembers the
// bytes of every session that was read or written (assets/browser/memory.js), and whatever is
// written next puts them back first, in the same transaction. Photos are lost.
#pragma once

#include "disk/disk.hpp"

#include <functional>
#include <optional>

namespace disk {

// Nothing is opened before the first request; a store that does not open is tried again with the
// next one, and its failure is the browser's own words. `wake` is called each time answers have
// become available, perhaps from within submit(). One thread, as a page has.
std::unique_ptr<Disk> open_browser_disk(std::function<void()> wake);

// What this browser remembers of itself beside the store (localStorage): small texts by name, each
// put in place of the one before. Not forced; nothing of a batch belongs here.
std::optional<std::string> small_text(const std::string& name);

// Nothing, or the browser's own words why not.
std::optional<std::string> keep_small_text(const std::string& name, const std::string& text);

}

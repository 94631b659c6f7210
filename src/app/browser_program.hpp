// The program as a person meets it in a browser.
#pragma once

namespace app {

// Begins, and returns: the page calls from then on. False where nothing can be shown, which the
// page then says.
bool begin_in_browser();

}

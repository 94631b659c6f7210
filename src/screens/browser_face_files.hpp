// Faces that come later, in a browser.
#pragma once

namespace screens {

// The page fetches them, once for all times that it is asked, and has the screens drawn anew when
// they are there. Where they cannot be had, it tries again when there is a network.
void fetch_faces();

}

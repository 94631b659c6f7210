// The baseline of everything drawn: an ImGui window that fills the display, with some widgets.
#pragma once

namespace speed {

// Within ImGui's frame.
void plain_widgets();

}

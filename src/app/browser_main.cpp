#include "app/browser_program.hpp"

int main() { return app::begin_in_browser() ? 0 : 1; }

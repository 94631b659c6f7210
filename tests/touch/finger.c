// A finger and a keyboard for Weston's headless back end, which has no input of its own: a module
// that Weston loads, and that reads lines from a pipe.
//
//   down X Y | move X Y | up       of one finger, in pixels of the output
//   key CODE 1|0                   Linux's code of a key, pressed or released
//
// They enter Weston where those of a real touch screen do, and go from there as wl_touch to
// XWayland, which makes the first finger the pointer of X11.
#include <libweston/libweston.h>

#include <fcntl.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <time.h>
#include <unistd.h>

// Weston exports these for its back ends and publishes no header for them: as in its
// libweston/backend.h and libweston-internal.h of 10.0.
void weston_seat_init(struct weston_seat* seat, struct weston_compositor* compositor,
                      const char* name);
int weston_seat_init_keyboard(struct weston_seat* seat, struct xkb_keymap* keymap);
int weston_seat_init_touch(struct weston_seat* seat);
struct weston_touch_device*
weston_touch_create_touch_device(struct weston_touch* touch, const char* system_path,
                                 void* backend_data, const struct weston_touch_device_ops* ops);
void notify_touch_normalized(struct weston_touch_device* device, const struct timespec* time,
                             int finger, double x, double y,
                             const struct weston_point2d_device_normalized* normalized, int type);
void notify_touch_frame(struct weston_touch_device* device);
void notify_key(struct weston_seat* seat, const struct timespec* time, uint32_t key,
                enum wl_keyboard_key_state state, enum weston_key_state_update update);
void notify_keyboard_focus_in(struct weston_seat* seat, struct wl_array* keys,
                              enum weston_key_state_update update);

struct hand {
  struct weston_seat seat;
  struct weston_touch_device* glass;
  char line[64];
  size_t length;
};

static void do_as_told(struct hand* hand) {
  struct timespec now;
  double x = 0, y = 0;
  unsigned key = 0, down = 0;
  int type = -1;
  clock_gettime(CLOCK_MONOTONIC, &now);
  if (sscanf(hand->line, "down %lf %lf", &x, &y) == 2)
    type = WL_TOUCH_DOWN;
  else if (sscanf(hand->line, "move %lf %lf", &x, &y) == 2)
    type = WL_TOUCH_MOTION;
  else if (strcmp(hand->line, "up") == 0)
    type = WL_TOUCH_UP;
  else if (sscanf(hand->line, "key %u %u", &key, &down) == 2)
    notify_key(&hand->seat, &now, key,
               down ? WL_KEYBOARD_KEY_STATE_PRESSED : WL_KEYBOARD_KEY_STATE_RELEASED,
               STATE_UPDATE_AUTOMATIC);
  else
    weston_log("finger: not understood: %s\n", hand->line);
  if (type < 0) return;
  notify_touch_normalized(hand->glass, &now, 0, x, y, NULL, type);
  notify_touch_frame(hand->glass);
}

static int read_lines(int pipe, uint32_t mask, void* data) {
  struct hand* hand = data;
  char c = 0;
  (void)mask;
  while (read(pipe, &c, 1) == 1) {
    if (c != '\n') {
      if (hand->length + 1 < sizeof hand->line) hand->line[hand->length++] = c;
      continue;
    }
    hand->line[hand->length] = '\0';
    hand->length = 0;
    do_as_told(hand);
  }
  return 1;
}

__attribute__((visibility("default"))) int wet_module_init(struct weston_compositor* compositor,
                                                           int* argc, char* argv[]) {
  struct hand* hand = calloc(1, sizeof *hand);
  const char* path = getenv("SLABSIDE_FINGER");
  const int pipe = path ? open(path, O_RDWR | O_NONBLOCK | O_CLOEXEC) : -1;
  struct wl_array none;
  (void)argc;
  (void)argv;
  if (!hand || pipe < 0) return -1;
  weston_seat_init(&hand->seat, compositor, "hand");
  if (weston_seat_init_touch(&hand->seat) != 0 || weston_seat_init_keyboard(&hand->seat, NULL) != 0)
    return -1;
  hand->glass = weston_touch_create_touch_device(hand->seat.touch_state, "none", NULL, NULL);
  wl_array_init(&none);
  notify_keyboard_focus_in(&hand->seat, &none, STATE_UPDATE_AUTOMATIC);
  wl_event_loop_add_fd(wl_display_get_event_loop(compositor->wl_display), pipe, WL_EVENT_READABLE,
                       read_lines, hand);
  return hand->glass ? 0 : -1;
}

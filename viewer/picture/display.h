#pragma once

#include <string>

struct _XDisplay;  // Xlib's. NOLINT(bugprone-reserved-identifier)

namespace scalpmark::viewer {

/// A display that pictures can be drawn on. Where DISPLAY names one that answers, that; otherwise a virtual
/// one (Xvfb) is started, DISPLAY set to it, and both undone at the end of this object's life. Xvfb also ends
/// when this process does, however it ends. Refuses (ViewerError) when there is neither a display nor an
/// Xvfb. Make one at a time, from the thread that outlives it.
class Display {
public:
  Display();
  ~Display();
  Display(const Display&) = delete;
  Display& operator=(const Display&) = delete;

  [[nodiscard]] bool is_virtual() const { return server_ > 0; }

private:
  int server_ = -1;  ///< process id of the Xvfb started here
  // Held for as long as there is drawing: a server whose last client leaves may start itself anew, and
  // whoever connects in that moment is turned away (VTK then ends the program).
  _XDisplay* connection_ = nullptr;
  bool had_display_ = false;
  std::string former_;
};

}  // namespace scalpmark::viewer

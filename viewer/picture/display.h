#pragma once

#include <string>

struct _XDisplay;  // Xlib's. NOLINT(bugprone-reserved-identifier)

namespace scalpmark::viewer {

/// A display that pictures can be drawn on. Where DISPLAY names one that answers, that; otherwise a virtual
/// one (Xvfb) is started, and ended with this object's life. It also ends when this process does, however it
/// ends. The environment is read and never written, since other threads may be reading it: whoever draws is
/// handed the display. Refuses (ViewerError) when there is neither a display nor an Xvfb. Make it in a thread
/// that outlives it.
class Display {
public:
  Display();
  ~Display();
  Display(const Display&) = delete;
  Display& operator=(const Display&) = delete;

  [[nodiscard]] bool is_virtual() const { return server_ > 0; }
  /// ":5", as DISPLAY would name it.
  [[nodiscard]] const std::string& name() const { return name_; }
  /// Open for as long as this object lives, for the one thread that draws on it.
  [[nodiscard]] _XDisplay* connection() const { return connection_; }

private:
  int server_ = -1;  ///< process id of the Xvfb started here
  // Held for as long as there is drawing: a server whose last client leaves may start itself anew, and
  // whoever connects in that moment is turned away (VTK then ends the program).
  _XDisplay* connection_ = nullptr;
  std::string name_;
};

/// Whether there is a display for a window: the one that DISPLAY names answers.
[[nodiscard]] bool display_answers();

}  // namespace scalpmark::viewer

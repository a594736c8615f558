#pragma once

#include <vtkNew.h>
#include <vtkOpenGLFramebufferObject.h>
#include <vtkOpenGLRenderWindow.h>

#include <optional>
#include <vector>

namespace scalpmark::viewer {

/// A copy of what a window is drawn into, colours and depths, that spares drawing the same anew. What it was
/// drawn from is told by numbers that change with it.
class StillPicture {
public:
  using Key = std::vector<unsigned long long>;

  /// Puts the copy back where it was made from the same; says whether it was.
  [[nodiscard]] bool put_back(vtkOpenGLRenderWindow& window, const Key& drawn_from);
  /// Copies what is in the window now, once the same has been drawn twice: what changes each time is not
  /// worth a copy.
  void keep(vtkOpenGLRenderWindow& window, const Key& drawn_from);
  void forget() { kept_.reset(); }
  void release(vtkWindow* window);

private:
  enum class Way : bool { in, out };
  [[nodiscard]] bool copy(vtkOpenGLRenderWindow& window, Way way);

  std::optional<Key> kept_, drawn_last_;
  vtkNew<vtkOpenGLFramebufferObject> copy_;
};

}  // namespace scalpmark::viewer

#pragma once

#include <vtkNew.h>
#include <vtkRenderWindow.h>

#include <QImage>
#include <QSize>

namespace scalpmark::window {

class UnseenWindow;

/// What VTK draws as a picture that an ordinary widget paints: drawn out of sight, by a context of its own,
/// and read back. Where OpenGL is software, a widget that is drawn by OpenGL itself (QVTKOpenGLNativeWidget)
/// costs as much as its content: the picture is copied twice, and then the whole window is put together by
/// OpenGL for each frame. A graphics card hands 1280 x 800 pixels back in 1 to 2 ms, of the 16.7 that a frame
/// may take.
class Canvas {
public:
  Canvas();
  ~Canvas();

  /// What renderers are added to.
  [[nodiscard]] vtkRenderWindow* window() const;
  void set_size(const QSize& pixels);
  [[nodiscard]] QSize size() const;
  /// Makes ready for drawing, once. To be called when there is a display to draw for. Says whether there is
  /// an OpenGL that VTK can draw with (3.2); without, draw() does nothing and there is no picture.
  bool begin();
  [[nodiscard]] bool is_ready() const;
  /// Draws what is in the window now.
  void draw();
  /// As drawn last, one pixel for each of the screen's. Null before the first.
  [[nodiscard]] const QImage& picture() const { return picture_; }

private:
  vtkNew<UnseenWindow> window_;
  QImage picture_;
};

}  // namespace scalpmark::window

#pragma once

#include <vtkNew.h>
#include <vtkRenderWindow.h>

#include <QImage>
#include <QSize>

namespace scalpmark::window {

class UnseenWindow;

/// What VTK draws as a picture that an ordinary widget paints: drawn out of sight, by a context of its own,
/// and read back. A widget that is drawn by OpenGL itself (QVTKOpenGLNativeWidget) has its picture copied
/// twice, and then the whole window put together by OpenGL for each frame; where OpenGL is software that is a
/// good part of a frame. A graphics card takes 1 to 2 ms to hand 1280 x 800 pixels back (from experience, not
/// measured here), of the 16.7 that a frame may take.
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

#include "viewer/window/stage_view/canvas.h"

#include <vtkGenericOpenGLRenderWindow.h>
#include <vtkObjectFactory.h>
#include <vtkOpenGLFramebufferObject.h>
#include <vtkOpenGLState.h>

#include <QOffscreenSurface>
#include <QOpenGLContext>
#include <QOpenGLFunctions>
#include <QSurfaceFormat>
#include <cstring>
#include <vector>

namespace scalpmark::window {

namespace {

QSurfaceFormat wanted_format() {
  QSurfaceFormat format;
  format.setRenderableType(QSurfaceFormat::OpenGL);
  format.setVersion(3, 2);
  format.setProfile(QSurfaceFormat::CoreProfile);
  return format;
}

}  // namespace

/// Draws by a context of Qt's into a framebuffer, and puts nothing on any screen.
class UnseenWindow : public vtkGenericOpenGLRenderWindow {
public:
  static UnseenWindow* New();
  vtkTypeMacro(UnseenWindow, vtkGenericOpenGLRenderWindow)

  bool begin() {
    if (tried_) return GetReadyForRendering();
    tried_ = true;
    context_.setFormat(wanted_format());
    if (!context_.create()) return false;
    surface_.setFormat(context_.format());
    surface_.create();
    if (!context_.makeCurrent(&surface_) || context_.format().version() < wanted_format().version())
      return false;
    SetReadyForRendering(true);
    return true;
  }

  // What VTK asks for again and again; another window's context (a sheet's) may have come in between.
  void MakeCurrent() override {
    if (GetReadyForRendering()) context_.makeCurrent(&surface_);
  }
  bool IsCurrent() override { return QOpenGLContext::currentContext() == &context_; }
  /// The picture is read from what was drawn into, not from a copy of it.
  void Frame() override {}

  /// Into rows from the top down.
  void read(QImage& into) {
    const int width = into.width(), height = into.height();
    MakeCurrent();
    auto* drawn = GetRenderFramebuffer();
    drawn->Bind(GL_READ_FRAMEBUFFER);
    drawn->ActivateReadBuffer(0);
    pixels_.resize(static_cast<std::size_t>(width) * static_cast<std::size_t>(height));
    // As QImage has them, so that nothing is converted when they are painted.
    context_.functions()->glReadPixels(0, 0, width, height, GL_BGRA, GL_UNSIGNED_INT_8_8_8_8_REV,
                                       pixels_.data());
    for (int y = 0; y < height; ++y)
      std::memcpy(into.scanLine(height - 1 - y),
                  pixels_.data() + static_cast<std::size_t>(y) * static_cast<std::size_t>(width),
                  static_cast<std::size_t>(width) * sizeof(quint32));
  }

protected:
  UnseenWindow() {
    SetReadyForRendering(false);
    SetOwnContext(0);
    SetMultiSamples(0);
  }
  // While there is a context to make current.
  ~UnseenWindow() override { Finalize(); }

private:
  bool tried_ = false;
  QOpenGLContext context_;
  QOffscreenSurface surface_;
  std::vector<quint32> pixels_;
};

vtkStandardNewMacro(UnseenWindow)

Canvas::Canvas() = default;
Canvas::~Canvas() = default;

vtkRenderWindow* Canvas::window() const {
  return window_;
}

void Canvas::set_size(const QSize& pixels) {
  window_->SetSize(pixels.width(), pixels.height());
}

QSize Canvas::size() const {
  const int* size = window_->GetSize();
  return {size[0], size[1]};
}

bool Canvas::begin() {
  return window_->begin();
}

bool Canvas::is_ready() const {
  return window_->GetReadyForRendering();
}

void Canvas::draw() {
  if (!is_ready()) return;
  // VTK puts the state back after a frame that it found before, which was OpenGL's own in the first one.
  // Under that depth test what is drawn flat over the scene hides what is written on it.
  window_->MakeCurrent();
  window_->GetState()->vtkglDepthFunc(GL_LEQUAL);
  window_->Render();
  if (picture_.size() != size()) picture_ = QImage(size(), QImage::Format_RGB32);
  window_->read(picture_);
}

}  // namespace scalpmark::window

#include "viewer/picture/picture.h"

#include <vtkCommand.h>
#include <vtkImageData.h>
#include <vtkNew.h>
#include <vtkOpenGLFramebufferObject.h>
#include <vtkOpenGLRenderWindow.h>
#include <vtkPNGWriter.h>
#include <vtkPixelBufferObject.h>
#include <vtkRenderWindow.h>
#include <vtkRenderer.h>
#include <vtkSmartPointer.h>
#include <vtkUnsignedCharArray.h>

#include <algorithm>

#include "geometry/base/message.h"
#include "models/files/own_files.h"
#include "models/files/safe_file.h"
#include "viewer/stage/drawing/blending.h"
#include "viewer/words/error.h"

namespace scalpmark::viewer {

namespace {

/// A window's driver keeps eight pictures of its size, though one is drawn into and read: beside that one
/// they stay small.
constexpr int small_px = 16;
/// Rows of a picture read back at once.
constexpr int rows_at_once = 64;
constexpr int smallest_width = 640, smallest_height = 480, largest = 4096;

}  // namespace

struct Picture::Parts {
  PictureSize size;
  vtkNew<vtkRenderWindow> window;
  vtkNew<BlendingRenderer> renderer;
  std::unique_ptr<Stage> stage;
  std::string pixels;

  [[nodiscard]] int wide() const { return size.width * pixel_ratio(); }
  [[nodiscard]] int high() const { return size.height * pixel_ratio(); }
  void set_small() { window->SetSize(small_px, small_px); }
  // Called as the renderer begins, when the window has bound what it draws into.
  void grow() {
    window->SetSize(wide(), high());
    drawn().Resize(wide(), high());
    drawn().Bind();
  }
  [[nodiscard]] vtkOpenGLFramebufferObject& drawn() {
    return *static_cast<vtkOpenGLRenderWindow*>(window.Get())->GetRenderFramebuffer();
  }
};

void check_size(const PictureSize& size) {
  if (size.width < smallest_width || size.height < smallest_height || size.width > largest ||
      size.height > largest)
    throw ViewerError(geometry::Message::of(
        "A picture of %1x%2 pixels cannot be drawn; choose a size from 640x480 to 4096x4096.", size.width,
        size.height));
}

Picture::Picture(const Display& display, const PictureSize& size) : parts_(std::make_unique<Parts>()) {
  check_size(size);
  // What goes wrong is said in our own sentences.
  vtkObject::GlobalWarningDisplayOff();
  parts_->size = size;
  auto* window = parts_->window.Get();
  window->SetDisplayId(display.connection());
  window->SetOffScreenRendering(1);
  window->SetMultiSamples(0);
  window->SetDPI(72);
  parts_->set_small();
  window->AddRenderer(parts_->renderer);
  if (window->SupportsOpenGL() == 0)
    throw ViewerError(geometry::Message::of(
        "The display has no OpenGL 3.2, which pictures are drawn with; install the Debian package libgl1-mesa-dri."));
  window->Render();  // nothing yet: the driver gets ready
  window->SetSize(parts_->wide(), parts_->high());
  constexpr float before_the_stage = 1;
  parts_->renderer->AddObserver(vtkCommand::StartEvent, parts_.get(), &Parts::grow, before_the_stage);
  parts_->stage = std::make_unique<Stage>(parts_->renderer);
  parts_->stage->set_pixel_ratio(pixel_ratio());
}

Picture::~Picture() = default;

Stage& Picture::stage() {
  return *parts_->stage;
}

const std::string& Picture::draw() {
  Parts& p = *parts_;
  p.set_small();
  p.window->Render();
  const int ratio = pixel_ratio(), wide = p.wide(), high = p.high();
  p.pixels.assign(3 * static_cast<size_t>(p.size.width) * static_cast<size_t>(p.size.height), '\0');
  const auto row_bytes = 3 * static_cast<size_t>(wide);
  p.window->MakeCurrent();
  p.drawn().Bind();
  p.drawn().ActivateReadBuffer(0);
  size_t out = 0;
  for (int top = 0; top < p.size.height; top += rows_at_once) {
    // Rows come from the bottom up.
    const int rows = std::min(rows_at_once, p.size.height - top), lowest = high - ratio * (top + rows);
    int part[4] = {0, wide - 1, lowest, lowest + ratio * rows - 1};
    const auto read =
        vtkSmartPointer<vtkPixelBufferObject>::Take(p.drawn().DownloadColor3(part, VTK_UNSIGNED_CHAR));
    const auto* pixels = read ? static_cast<const unsigned char*>(read->MapPackedBuffer()) : nullptr;
    if (pixels == nullptr)
      throw ViewerError(geometry::Message::of(
          "The picture could not be read back from the graphics driver; choose a smaller --size."));
    for (int y = rows - 1; y >= 0; --y) {
      const unsigned char* lower = pixels + row_bytes * static_cast<size_t>(ratio * y);
      const unsigned char* upper = lower + row_bytes;
      for (int x = 0; x < p.size.width; ++x)
        for (size_t c = 0; c < 3; ++c) {
          const size_t a = 6 * static_cast<size_t>(x) + c, b = a + 3;
          p.pixels[out++] = static_cast<char>((lower[a] + lower[b] + upper[a] + upper[b] + 2) / 4);
        }
    }
    read->UnmapPackedBuffer();
  }
  return p.pixels;
}

std::string Picture::png() const {
  const Parts& p = *parts_;
  vtkNew<vtkImageData> image;
  image->SetDimensions(p.size.width, p.size.height, 1);
  image->AllocateScalars(VTK_UNSIGNED_CHAR, 3);
  const auto row_bytes = 3 * static_cast<size_t>(p.size.width);
  for (int y = 0; y < p.size.height; ++y)
    std::copy_n(p.pixels.data() + row_bytes * static_cast<size_t>(p.size.height - 1 - y), row_bytes,
                static_cast<char*>(image->GetScalarPointer(0, y, 0)));
  vtkNew<vtkPNGWriter> writer;
  writer->SetInputData(image);
  writer->WriteToMemoryOn();
  writer->SetCompressionLevel(2);  // a twelfth more bytes than VTK's 5, in half its time
  writer->AddText("Software", models::own_name);
  writer->Write();
  const auto* bytes = writer->GetResult();
  if (bytes == nullptr || bytes->GetNumberOfValues() == 0)
    throw ViewerError(
        geometry::Message::of("The picture could not be packed as PNG; choose a smaller --size."));
  return {reinterpret_cast<const char*>(const_cast<vtkUnsignedCharArray*>(bytes)->GetPointer(0)),
          static_cast<size_t>(bytes->GetNumberOfValues())};
}

PreparedPicture::PreparedPicture(const PictureSize& size) : picture_(display_, size) {}

void PreparedPicture::show(const geometry::Head& head, const geometry::Case& the_case,
                           const geometry::Plan& plan, const Shown& shown, View view) {
  picture_.stage().show(head, the_case, plan, shown);
  picture_.stage().look(view);
}

void PreparedPicture::write(const std::filesystem::path& file) {
  (void)picture_.draw();
  models::write_whole(file, picture_.png());
}

}  // namespace scalpmark::viewer

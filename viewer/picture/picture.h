#pragma once

#include <filesystem>
#include <memory>
#include <string>

#include "viewer/picture/display.h"
#include "viewer/stage/scene/camera.h"
#include "viewer/stage/stage.h"

namespace scalpmark::viewer {

/// Width and height of a picture, pixels.
struct PictureSize {
  int width = 1600, height = 1200;
};

/// Refuses (ViewerError) a size outside 640 x 480 to 4096 x 4096.
void check_size(const PictureSize& size);

/// A stage without a window, on a display that outlives it. Each pixel is the mean of four drawn ones, so
/// edges are smooth whatever the graphics driver offers.
class Picture {
public:
  /// Refuses (ViewerError) a bad size, and a display without OpenGL 3.2.
  Picture(const Display& display, const PictureSize& size);
  ~Picture();
  Picture(const Picture&) = delete;
  Picture& operator=(const Picture&) = delete;

  [[nodiscard]] Stage& stage();
  /// Drawn pixels for each pixel of the picture: the stage's pixels divided by this are the picture's.
  [[nodiscard]] static int pixel_ratio() { return 2; }

  /// Draws, and gives the picture back as rows from the top, three bytes a pixel. It holds until the next is
  /// drawn.
  [[nodiscard]] const std::string& draw();
  /// The bytes of a PNG file of the last picture drawn.
  [[nodiscard]] std::string png() const;

private:
  struct Parts;
  std::unique_ptr<Parts> parts_;
};

/// A display and a picture on it, made ready before there is anything to show: the display, its driver and
/// its context take a fifth of a second, in which another thread may read the head. Some lines of a user's
/// code:
///   const auto loaded = models::load_head(kept);
///   const Plan plan = geometry::solve(loaded.head, kept.entered);
///   PreparedPicture picture({});
///   picture.show(loaded.head, kept.entered, plan, Shown{}, View::left);
///   picture.write("a.png");
class PreparedPicture {
public:
  /// Refuses (ViewerError) what Picture refuses, and where no display can be had.
  explicit PreparedPicture(const PictureSize& size);

  /// Sets the stage. A second time with another plan on the same head, only what is different is made anew.
  void show(const geometry::Head& head, const geometry::Case& the_case, const geometry::Plan& plan,
            const Shown& shown, View view);
  /// Draws and writes a PNG file, whole or not at all (see models/files/safe_file.h).
  void write(const std::filesystem::path& file);

private:
  Display display_;  // goes last
  Picture picture_;
};

}  // namespace scalpmark::viewer

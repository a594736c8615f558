#pragma once

#include <vtkRenderer.h>
#include <vtkSmartPointer.h>

#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "geometry/head/head.h"
#include "geometry/plan/case.h"
#include "geometry/plan/plan.h"
#include "viewer/stage/drawing/label.h"
#include "viewer/stage/scene/camera.h"
#include "viewer/stage/scene/mark.h"
#include "viewer/stage/scene/shown.h"
#include "viewer/stage/scene/sight.h"

namespace scalpmark::viewer {

struct Scene;

/// What a renderer shows of a head and a plan: things/ makes a scene of them, a value, and drawing/ makes VTK
/// of the scene. Drawing is brought up to date when the renderer starts a frame and the view has changed:
/// sizes are in pixels, labels are placed anew, what the head hides is left out. A new plan moves small
/// things only; the skin goes to the renderer once. Projection is parallel, so that lengths can be compared
/// across the picture.
class Stage {
public:
  explicit Stage(vtkRenderer* renderer);
  ~Stage();
  Stage(const Stage&) = delete;
  Stage& operator=(const Stage&) = delete;

  /// Refuses (ViewerError) a coil on a spot the plan does not have.
  void show(const geometry::Head& head, const geometry::Case& the_case, const geometry::Plan& plan,
            const Shown& shown);
  void show(Scene scene);

  /// Pixels of the renderer for each pixel people see: more than 1 on a dense screen, or for a picture that
  /// is averaged down afterwards.
  void set_pixel_ratio(double ratio);

  /// What lies over the picture: nothing is written there. Says whether that is new.
  bool set_covered(const std::optional<Box>& part);

  /// A thinner mesh of the head to be drawn while something moves (skin_mesh.h); nothing: the head itself.
  void set_thin_skin(const std::optional<geometry::Surface>& thin);
  void set_moving(bool moving);
  [[nodiscard]] bool draws_thin_skin() const;

  /// Looks that way, with the head above the jaw and the coil's casing fitted into the free part of the
  /// picture. The renderer's window must have its size.
  void look(const Gaze& gaze);
  void look(View view);

  // As of the last frame (or refresh):
  [[nodiscard]] const Sight& sight() const;
  [[nodiscard]] Pixel project(const Eigen::Vector3d& p) const { return sight().project(p); }
  [[nodiscard]] std::vector<SeenMark> marks() const;
  [[nodiscard]] const std::vector<PlacedLabel>& labels() const;
  /// What is written around the head: title, sides, caution, legend, numbers.
  [[nodiscard]] const std::vector<Caption>& captions() const;

  /// The visible mark nearest to a pixel, no further than `reach_px`.
  [[nodiscard]] std::optional<SeenMark> mark_near(const Pixel& at, double reach_px) const;
  /// What the renderer itself finds in front at a pixel (translucent things let the pick through).
  [[nodiscard]] std::optional<Thing> pick(const Pixel& at) const;
  /// The skin seen at a pixel.
  [[nodiscard]] std::optional<geometry::SurfacePoint> skin_at(const Pixel& at) const;

  /// Brings marks, lines and labels up to date with the camera; done by itself at the start of a frame.
  void refresh();

private:
  struct Parts;
  vtkSmartPointer<vtkRenderer> renderer_;
  std::unique_ptr<Parts> parts_;
  unsigned long observer_ = 0;
};

}  // namespace scalpmark::viewer

#pragma once

#include <memory>
#include <optional>
#include <string>

#include "geometry/head/head.h"
#include "geometry/surface/surface.h"

namespace scalpmark::viewer {

/// What an open page asks of the kernel: one case on one head, a question and an answer at a time, both as
/// JSON. Compiled for browsers as it is; the program has it too, so that both can be held against each other.
///
/// Questions, by their "ask" (places and lengths mm, angles degrees):
/// - "plan": the plan with its tape distances, as a plan file has it (models/results/plan_file.h)
/// - "place": the coil on the skin at "at", or first along the ray "from", "way", or "nudge" ([forward,
///   outward]) from "at"; turned to "angle_deg", without it to the case's. Null where the ray misses. Else
///   its "placement" as a plan file has it (tape distances once there are fields), where it lies ("frame"),
///   how far from the site ("from_site"), what to draw ("part"), and the head cut beside it ("side")
/// - "fields": works out the head's distance fields, which takes seconds
/// - "check": today's "site" and "edge" marks by tapes, each with "vertex", "nasion", "left_tragus",
///   "right_tragus" (two or more); of several places that fit, those that "site_place" and "edge_place" name
///   by number. A check file (models/results/check_file.h) under "check", and a "sentence"
/// - "in_sight": of each of "points" ([x, y, z, and the skin's direction there], one after the other),
/// whether
///   the head hides it from who looks from "toward_eye"
///
/// What cannot be answered is {"refused": a message}, a message being {"pattern", "parts"}.
class PageKernel {
public:
  /// Without a skin, the generic head that the case asks for. Refuses (ModelError, GeometryError) a case or
  /// a head that is none.
  PageKernel(const std::string& case_json, std::optional<geometry::Surface> skin);
  ~PageKernel();
  PageKernel(const PageKernel&) = delete;
  PageKernel& operator=(const PageKernel&) = delete;

  /// Never throws.
  [[nodiscard]] std::string answer(const std::string& question) const;

private:
  struct Parts;
  std::unique_ptr<Parts> parts_;
};

}  // namespace scalpmark::viewer

#pragma once

#include <functional>
#include <string>
#include <vector>

#include "geometry/base/message.h"
#include "geometry/surface/surface.h"

namespace scalpmark::models {

/// A skin closed at holes up to so long around, each by a fan of triangles about its middle; the others stay.
/// Appends a sentence to `notes` when there were any.
[[nodiscard]] geometry::Surface close_small_holes(const geometry::Surface& skin, double most_around_mm,
                                                  std::vector<geometry::Message>& notes);

/// A skin of more than 250 000 triangles thinned to 150 000, or to 250 000 if that keeps closer
/// (thin_scan.h), smaller ones as they are. Appends a sentence with the farthest that an old corner lies
/// from the new skin, which is at most 0.3 mm. `told` hears the part done, 0 to 1. Refuses (ModelError,
/// `name` says where) a skin that cannot be thinned so.
[[nodiscard]] geometry::Surface thin_to_size(const geometry::Surface& skin, const std::string& name,
                                             std::vector<geometry::Message>& notes,
                                             const std::function<void(double)>& told = {});

/// A skin with shoulders (broader than any head in two directions) cut off below the neck, where the generic
/// head fitted to it ends; others, and one in which no head can be made out, as they are. Appends a sentence
/// to `notes`.
[[nodiscard]] geometry::Surface cut_shoulders(const geometry::Surface& skin,
                                              std::vector<geometry::Message>& notes);

/// Says in `notes` when a skin is rough, as hair or a coarse scanner leaves it: over three tenths of its area
/// or more, corners within 5 mm lie more than 0.25 mm off their common plane, root mean square (a bald head's
/// curve: 0.05).
void note_roughness(const geometry::Surface& skin, std::vector<geometry::Message>& notes);

}  // namespace scalpmark::models

#pragma once

#include <filesystem>
#include <string>
#include <vector>

#include "geometry/base/message.h"
#include "geometry/field/coil_field.h"
#include "geometry/field/depth_and_spread.h"
#include "geometry/field/moved_coil.h"
#include "geometry/plan/case.h"

namespace scalpmark::models {

/// What a coil's field was asked about besides its map, and how it is put into words, for its file.
struct FieldAsked {
  std::string on;                        ///< "start", "hotspot", "treatment", or a grid spot as "ROW,COLUMN"
  std::vector<geometry::FieldThere> at;  ///< at the places asked for
  std::vector<geometry::MovedRatio> moved;
  geometry::DepthAndSpread depth;
  std::vector<geometry::Message> sentences;  ///< the field in words, for people who read the file
};

/// A coil's field in a round model head as JSON (format scalpmark-field, version 1;
/// models/schema/field.schema.json). Fields to a millionth of V/m for 1 A/us, lengths to 0.001 mm.
[[nodiscard]] std::string field_json(const geometry::CoilField& field, const geometry::Case& the_case,
                                     const FieldAsked& asked);
/// Whole or not at all.
void write_field(const std::filesystem::path& file, const geometry::CoilField& field,
                 const geometry::Case& the_case, const FieldAsked& asked);

}  // namespace scalpmark::models

#pragma once

#include <filesystem>
#include <optional>
#include <string>
#include <vector>

#include "geometry/base/message.h"
#include "geometry/coil/contact.h"
#include "geometry/field/moved_coil.h"
#include "geometry/plan/case.h"
#include "geometry/plan/plan.h"

namespace scalpmark::models {

/// What a contact was worked out from, and how it is put into words, for its file.
struct ContactAsked {
  std::string on;  ///< "start", "hotspot", "treatment", or a spot of the grid as "ROW,COLUMN"
  geometry::Placement placement;
  geometry::ContactOptions options;
  std::optional<geometry::FieldAskew> field;  ///< of a coil held askew
  std::vector<geometry::Message> sentences;   ///< the contact in words, for people who read the file
};

/// How a coil rests as JSON (format scalpmark-contact, version 1; models/schema/contact.schema.json). Lengths
/// are written to 0.001 mm.
[[nodiscard]] std::string contact_json(const geometry::Contact& contact, const geometry::Case& the_case,
                                       const ContactAsked& asked);
/// Whole or not at all.
void write_contact(const std::filesystem::path& file, const geometry::Contact& contact,
                   const geometry::Case& the_case, const ContactAsked& asked);

}  // namespace scalpmark::models

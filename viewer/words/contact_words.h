#pragma once

#include <optional>
#include <string>
#include <vector>

#include "geometry/base/message.h"
#include "geometry/coil/contact.h"
#include "geometry/field/moved_coil.h"

namespace scalpmark::viewer {

/// "the scalp", "the left ear", "the right ear", "the brow or face".
[[nodiscard]] geometry::Message region_name(geometry::Region region);

/// "left wing", "right wing" as seen from the handle; "coil".
[[nodiscard]] geometry::Message wing_name(geometry::Wing wing);

/// A coil's part as its data names it; "casing", "bridge" and "handle" in the language of the desktop.
[[nodiscard]] geometry::Message part_name(const std::string& part);

/// How a coil rests, a sentence for each thing to be known. `field`: of a coil held askew.
[[nodiscard]] std::vector<geometry::Message> contact_sentences(
    const geometry::Contact& contact, const std::optional<geometry::FieldAskew>& field = {});

}  // namespace scalpmark::viewer

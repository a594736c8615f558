#pragma once

#include <optional>
#include <string>
#include <vector>

namespace scalpmark::viewer {

/// What a patient reads: on the screens of Explain and on the handout, in the same words. No jargon, no
/// numbers.
struct PatientPage {
  std::string heading, text;
};
/// What happens, what one feels and hears, how long it takes. `brain_shown`: whether a brain is in the
/// picture; `patch_cm2`: how large the part of it is that is lit, where it is.
[[nodiscard]] std::vector<PatientPage> patient_pages(bool brain_shown,
                                                     const std::optional<double>& patch_cm2);

}  // namespace scalpmark::viewer

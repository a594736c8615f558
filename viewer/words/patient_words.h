#pragma once

#include <string>
#include <vector>

namespace scalpmark::viewer {

/// What a patient reads: on the screens of Explain and on the handout, in the same words. No jargon, no
/// numbers.
struct PatientPage {
  std::string heading, text;
};
/// What happens, what one feels and hears, how long it takes. `brain_shown`: whether a brain is in the
/// picture.
[[nodiscard]] std::vector<PatientPage> patient_pages(bool brain_shown);

}  // namespace scalpmark::viewer

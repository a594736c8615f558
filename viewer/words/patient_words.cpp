#include "viewer/words/patient_words.h"

#include "viewer/words/field_words.h"
#include "viewer/words/words.h"

namespace scalpmark::viewer {

std::vector<PatientPage> patient_pages(bool brain_shown, const std::optional<double>& patch_cm2) {
  const std::string coil =
      words(Words::tr("The flat coil rests gently on your head, and you hear it click."));
  const std::string pulse =
      brain_shown && patch_cm2
          ? words(
                Words::tr(
                    "Each click sends a short magnetic pulse through the skin to the part of the brain that is lit "
                    "under the green diamond, the place your clinician has chosen. The lit part is about as large as "
                    "%1, strongest in its middle and fading outward. It is drawn on a sample brain, not your own."),
                {words(size_of_patch(*patch_cm2))})
      : brain_shown
          ? words(Words::tr(
                "Each click sends a short magnetic pulse through the skin to the part of the brain that "
                "is lit under the green diamond, the place your clinician has chosen. It is drawn on a sample "
                "brain, not your own."))
          : words(Words::tr(
                "Each click sends a short magnetic pulse through the skin to the part of the brain under the "
                "green diamond, which is the place your clinician has chosen."));
  return {{words(Words::tr("What happens")), coil + " " + pulse},
          {words(Words::tr("What you feel and hear")),
           words(Words::tr(
               "Each click is loud, like a snap of the fingers beside your ear, so you are given ear "
               "plugs. You feel a tap on the skin under the coil, and muscles near it may twitch. Say so "
               "at once if anything hurts or feels wrong: it can be stopped at any moment."))},
          {words(Words::tr("How long it takes")),
           words(Words::tr(
               "You sit in a chair and stay awake. The first time takes longest, since the place is "
               "looked for; after that, marks on a cap lead back to it. How many visits there are, how "
               "long each one is, and what you may do afterwards, your clinician tells you."))}};
}

}  // namespace scalpmark::viewer

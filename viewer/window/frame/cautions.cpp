#include "viewer/window/frame/cautions.h"

#include <QCoreApplication>

#include "viewer/words/numbers.h"

namespace scalpmark::window {

namespace {

// What lupdate finds these texts under.
class Cautions {
  Q_DECLARE_TR_FUNCTIONS(Cautions)
};

// Common practice, no source, in the unit that is read.
constexpr double usual_error_mm = 10, tape_read_to_mm = 5;

}  // namespace

QString caution_line() {
  return Cautions::tr(
      "Training and illustration only; not a navigation or treatment device. Follow the device's "
      "instructions, "
      "local codes and the licensed clinician.");
}

QString cautions_text() {
  const QString text = Cautions::tr(
      "<p><b>For training and illustration only.</b> Scalpmark is not a navigation or treatment device and "
      "is "
      "not for treatment decisions.</p>"
      "<p>A licensed prescriber decides site, threshold and dose; the device's instructions and local codes "
      "come first.</p>"
      "<p>Ask before any pulse about:</p>"
      "<ul><li>metal or implants in or near the head</li><li>pacemakers and stimulators</li>"
      "<li>seizures, and drugs that make them more likely</li><li>pregnancy</li></ul>"
      "<p>Ear protection for patient and staff. Know what to do in a seizure.</p>"
      "<p>A cap and marks without tracking put the pulse about %1 off on average; a tape reads to "
      "%2.</p>");
  return text.arg(QString::fromStdString(viewer::rough_length(usual_error_mm)),
                  QString::fromStdString(viewer::rough_length(tape_read_to_mm)));
}

}  // namespace scalpmark::window

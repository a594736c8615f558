#pragma once

#include <QImage>
#include <string>
#include <vector>

#include "viewer/sheet/sheet.h"
#include "viewer/words/patient_words.h"

namespace scalpmark::viewer {

/// One page for a patient to take home: the picture, and what the screens say.
struct Handout {
  QImage picture;
  std::string whose;  ///< "A drawing of a head, shaped by a tape measure"
  std::vector<PatientPage> pages;
};

/// The bytes of a PDF file of one page; the picture as large as the words leave room for. Needs a
/// QGuiApplication. Refuses (ViewerError) words that do not fit on a page beside any picture.
[[nodiscard]] std::string handout_pdf(const Handout& handout, Paper paper);
/// The same onto a printer, on the paper it has.
void paint_handout(const Handout& handout, QPagedPaintDevice& onto);

}  // namespace scalpmark::viewer

// German ships whole: every text, with the same parts in it, a decimal comma and A4.
#include <QFile>
#include <QRegularExpression>
#include <QTranslator>
#include <QXmlStreamReader>
#include <catch2/catch.hpp>
#include <map>

#include "tests/viewer/window/opened_window.h"
#include "viewer/sheet/content.h"
#include "viewer/window/frame/translation.h"
#include "viewer/words/numbers.h"
#include "viewer/words/words.h"

using namespace scalpmark;
using namespace scalpmark::window;

namespace {

struct Text {
  QString translation;
  bool finished = true;
};

/// By context, source and comment.
std::map<QStringList, Text> texts_of(const QString& name) {
  QFile file(QStringLiteral(SCALPMARK_SOURCE_DIR "/viewer/window/translations/") + name);
  REQUIRE(file.open(QIODevice::ReadOnly));
  QXmlStreamReader xml(&file);
  std::map<QStringList, Text> all;
  QString context, source, comment;
  while (!xml.atEnd()) {
    if (xml.readNext() != QXmlStreamReader::StartElement) continue;
    if (xml.name() == QLatin1String("message")) comment.clear();
    if (xml.name() == QLatin1String("name")) context = xml.readElementText();
    if (xml.name() == QLatin1String("source")) source = xml.readElementText();
    if (xml.name() == QLatin1String("comment")) comment = xml.readElementText();
    if (xml.name() == QLatin1String("translation")) {
      const bool finished = !xml.attributes().hasAttribute(QStringLiteral("type"));
      const QString text = xml.readElementText(QXmlStreamReader::IncludeChildElements);
      all[{context, source, comment}] = {text, finished};
    }
  }
  REQUIRE_FALSE(xml.hasError());
  return all;
}

QStringList parts_of(const QString& text) {
  QStringList parts;
  static const QRegularExpression part(QStringLiteral("%[1-9n]|</?[a-z0-9]+>"));
  for (auto found = part.globalMatch(text); found.hasNext();) parts << found.next().captured();
  parts.sort();
  parts.removeDuplicates();
  return parts;
}

}  // namespace

TEST_CASE("every text is there in German, with the same parts in it") {
  const auto english = texts_of("scalpmark.ts"), german = texts_of("scalpmark_de.ts");
  CHECK(english.size() > 1000);
  CHECK(german.size() == english.size());
  for (const auto& [key, unused] : english) {
    CAPTURE(key.join(" | ").toStdString());
    const auto found = german.find(key);
    if (found == german.end()) {
      FAIL_CHECK("is not there");
      continue;
    }
    CHECK(found->second.finished);
    CHECK_FALSE(found->second.translation.isEmpty());
    CHECK(parts_of(found->second.translation) == parts_of(key[1]));
  }
}

TEST_CASE("in German the window, the sheet and a refusal speak German, with a decimal comma") {
  QCoreApplication& app = *QCoreApplication::instance();
  const auto before = app.findChildren<QTranslator*>();
  REQUIRE(translate(app, QLocale(QLocale::German, QLocale::Germany),
                    {QStringLiteral(SCALPMARK_BINARY_DIR "/translations")}));
  {
    OpenedWindow opened;
    MainWindow& w = opened.window;
    CHECK(viewer::tape_length(362) == "36,2 cm");
    CHECK(w.worksheet().measure()->nasion_inion()->edit()->text() == "36,2");
    opened.type(w.worksheet().measure()->nasion_inion()->edit(), "36,5");
    opened.settle();
    CHECK(*w.session().case_file().the_case.tape_mm.nasion_inion_mm == Approx(365));
    const auto sheet = viewer::sheet_content(w.session().case_file(), w.session().head(), w.session().plan(),
                                             "26. November 2026", nullptr);
    CHECK(sheet.measures.rows[0][1] == "36,5");
    CHECK(sheet.measures.title != "Measures");
    CHECK(QString::fromStdString(sheet.not_this).contains(QStringLiteral("Schulung"), Qt::CaseInsensitive));
    opened.type(w.worksheet().measure()->nasion_inion()->edit(), "90,5");
    const QString problem = w.worksheet().measure()->nasion_inion()->problem();
    CHECK(problem.contains("44,0"));
    CHECK_FALSE(problem.contains("must be"));
  }
  for (QTranslator* translator : app.findChildren<QTranslator*>())
    if (!before.contains(translator)) {
      QCoreApplication::removeTranslator(translator);
      delete translator;
    }
}

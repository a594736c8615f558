#pragma once

#include <QDate>
#include <QString>
#include <string>

namespace scalpmark::window {

/// The name a save dialog proposes: the case's label and the date, beside the case's own file where it has
/// one
/// ("/cases/Bench head 2026-11-27.pdf"). What file systems do not take is left out of the label; a case
/// without a label is called after what it is.
[[nodiscard]] QString proposed_name(const std::string& label, const QString& case_file, const QDate& date,
                                    const QString& ending);

}  // namespace scalpmark::window

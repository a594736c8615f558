#pragma once

#include <QString>
#include <functional>
#include <string>

#include "models/files/output_guard.h"
#include "viewer/window/session/session.h"

namespace scalpmark::window {

/// What the case in work is read from: its file, its head's, and the template's.
[[nodiscard]] std::vector<models::Input> inputs_of(const Session& session);

/// Whether to replace a file that is there.
using AskReplace = std::function<bool(const QString& path)>;

/// Why nothing may be written there: it is one of the inputs. Empty where it may.
[[nodiscard]] QString input_at(const QString& path, const std::vector<models::Input>& inputs);

/// Whether to write there: asks where a file of another kind (models/files/own_files.h) would be replaced.
[[nodiscard]] bool may_replace(const QString& path, const std::string& format, const AskReplace& ask);

}  // namespace scalpmark::window

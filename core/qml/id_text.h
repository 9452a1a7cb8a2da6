// Ids as the screens carry them: text, "" for none.
#pragma once

#include <QString>

#include "core/model/id.h"

namespace ledgerboard::qml {

template <model::Kind K>
[[nodiscard]] QString idText(const model::Id<K>& id) {
    return id.isNil() ? QString() : QString::fromStdString(id.raw().toString());
}

// Nil where the text is no id.
template <model::Kind K>
[[nodiscard]] model::Id<K> idFrom(const QString& text) {
    const auto raw = model::RawId::parse(text.toStdString());
    return raw.ok() ? model::Id<K>(raw.value()) : model::Id<K>();
}

}  // namespace ledgerboard::qml

#include "core/qml/look_theme.h"

#include <algorithm>

#include <QFontDatabase>
#include <QtPlugin>

// Whoever has the theme reads HEIC.
Q_IMPORT_PLUGIN(HeifPictures)

namespace ledgerboard::qml {

namespace {

// `wanted` where it is installed, else whatever the system shows text in.
QString familyOr(const QString& wanted) {
    const bool here = QFontDatabase::families().contains(wanted);
    return here ? wanted : QFontDatabase::systemFont(QFontDatabase::GeneralFont).family();
}

}  // namespace

Theme::Theme(QObject* parent)
    : QObject(parent),
      words_(familyOr(QStringLiteral("Lato"))),
      slab_(familyOr(QStringLiteral("Roboto Slab"))) {}

void Theme::setMode(Mode mode) {
    if (mode_ != mode) {
        mode_ = mode;
        emit changed();
    }
}

void Theme::setTextPercent(int percent) {
    const int kept = std::clamp(percent, 100, 200);
    if (textPercent_ != kept) {
        textPercent_ = kept;
        emit changed();
    }
}

void Theme::setLeftHand(bool left) {
    if (leftHand_ != left) {
        leftHand_ = left;
        emit changed();
    }
}

void Theme::setStillness(bool still) {
    if (stillness_ != still) {
        stillness_ = still;
        emit changed();
    }
}

const LookTokens& Theme::look() const {
    return mode_ == Sun ? kSunLook : mode_ == Dark ? kDarkLook : kLightLook;
}

QColor Theme::colour(std::string_view token) {
    return {QString::fromUtf8(token.data(), static_cast<qsizetype>(token.size()))};
}

int Theme::typeSize(std::size_t step) const {
    return kTypeSizes.at(step) * textPercent_ / 100;
}

}  // namespace ledgerboard::qml

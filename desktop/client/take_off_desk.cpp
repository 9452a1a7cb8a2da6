#include "desktop/client/take_off_desk.h"

#include <cmath>

#include <QLocale>
#include <QRegularExpression>

#include "core/compute/pricing.h"

#include "desktop/client/said.h"

namespace ledgerboard::desk {

using compute::SizeForm;
using compute::TakeOffKind;

namespace {

// "length_ft" is "length" in "ft".
struct NameAndUnit {
    QString name;
    QString unit;
};

NameAndUnit partsOf(std::string_view key) {
    static const std::pair<const char*, const char*> kUnits[] = {
        {"_sqft", "sq ft"}, {"_cuyd", "cu yd"}, {"_gal", "gal"},
        {"_percent", "%"},  {"_ft", "ft"},      {"_in", "in"}};
    QString name = Said::text(key);
    for (const auto& [ending, unit] : kUnits) {
        if (name.endsWith(QLatin1String(ending))) {
            name.chop(static_cast<int>(qstrlen(ending)));
            return {name.replace(QLatin1Char('_'), QLatin1Char(' ')), QLatin1String(unit)};
        }
    }
    return {name.replace(QLatin1Char('_'), QLatin1Char(' ')), {}};
}

QString numberText(double number) {
    return QLocale::c().toString(std::round(number * 100) / 100, 'f',
                                 QLocale::FloatingPointShortest);
}

const TakeOffKind& kindAt(int kind) {
    return compute::takeOffKinds()[static_cast<std::size_t>(kind)];
}

// "12 + 8.5" are two numbers.
std::vector<double> numbersIn(const QString& text, bool& good) {
    std::vector<double> numbers;
    static const QRegularExpression kBetween(QStringLiteral("[+;\\s]+"));
    for (const auto& part : text.split(kBetween, Qt::SkipEmptyParts)) {
        bool isNumber = false;
        numbers.push_back(QLocale::c().toDouble(QString(part).remove(QLatin1Char(',')), &isNumber));
        good = good && isNumber;
    }
    return numbers;
}

}  // namespace

TakeOffDesk::TakeOffDesk(QObject* parent) : QObject(parent) {
    take();
}

void TakeOffDesk::begin(const QString& object, const QString& floorArea, const QString& wallArea) {
    static const std::pair<const char*, const char*> kSounds[] = {
        {"drywall", "wall-board"}, {"wallboard", "wall-board"},  {"wall board", "wall-board"},
        {"plaster", "wall-board"}, {"baseboard", "baseboard"},   {"paint", "paint"},
        {"tile", "tile"},          {"backsplash", "tile"},       {"floor", "flooring"},
        {"roof", "roof"},          {"shingle", "roof"},          {"sod", "sod"},
        {"lawn", "sod"},           {"gravel", "gravel"},         {"slab", "slab"},
        {"concrete", "slab"},      {"insulation", "insulation"}, {"fixture", "fixtures"}};
    floorArea_ = floorArea;
    wallArea_ = wallArea;
    const QString said = Said::text(compute::folded(object.toStdString()));
    int kind = kind_;
    for (const auto& [sound, what] : kSounds) {
        if (said.contains(QLatin1String(sound))) {
            kind = static_cast<int>(kinds().indexOf(QLatin1String(what)));
            break;
        }
    }
    kind_ = -1;
    setKind(qMax(0, kind));
}

void TakeOffDesk::setKind(int kind) {
    if (kind == kind_ || kind < 0 || kind >= static_cast<int>(kinds().size())) {
        return;
    }
    kind_ = kind;
    given_.clear();
    // What is known of the room is there already, to be written over.
    const QString what = kinds().at(kind);
    const bool isWall = what == QLatin1String("paint") || what == QLatin1String("wall-board");
    const QString known = isWall ? wallArea_ : floorArea_;
    const bool isRoom = isWall || what == QLatin1String("flooring");
    for (const auto& key : kindAt(kind_).keys) {
        if (isRoom && !known.isEmpty() && key.name == "area_sqft") {
            given_.emplace("area_sqft", known);
        }
    }
    emit kindChanged();
    take();
}

void TakeOffDesk::give(const QString& key, const QString& text) {
    if (text.trimmed().isEmpty()) {
        given_.erase(key.toStdString());
    } else {
        given_[key.toStdString()] = text.trimmed();
    }
    take();
}

void TakeOffDesk::take() {
    std::vector<compute::GivenSize> sizes;
    refused_.clear();
    result_.reset();
    for (const auto& key : kindAt(kind_).keys) {
        const auto found = given_.find(std::string(key.name));
        if (found == given_.end()) {
            continue;
        }
        compute::GivenSize size;
        size.key = std::string(key.name);
        if (key.form == SizeForm::Word) {
            size.word = found->second.toStdString();
        } else {
            bool good = true;
            size.numbers = numbersIn(found->second, good);
            if (!good) {
                refused_ = tr("%1: “%2” is no number.").arg(partsOf(key.name).name, found->second);
                emit taken();
                return;
            }
        }
        sizes.push_back(std::move(size));
    }
    auto result = compute::takeOff(kindAt(kind_).what, sizes);
    if (result.ok()) {
        result_ = std::move(result).value();
    } else if (!sizes.empty()) {
        refused_ = Said::trouble(result.error());
    }
    emit taken();
}

QStringList TakeOffDesk::kinds() const {
    QStringList list;
    for (const auto& kind : compute::takeOffKinds()) {
        list << Said::text(kind.what);
    }
    return list;
}

QString TakeOffDesk::says() const {
    return Said::text(kindAt(kind_).says);
}

QVariantList TakeOffDesk::sizes() const {
    QVariantList list;
    for (const auto& key : kindAt(kind_).keys) {
        const auto parts = partsOf(key.name);
        SizeLine line;
        line.key = Said::text(key.name);
        line.label =
            parts.unit.isEmpty() ? parts.name : parts.name + QStringLiteral(", ") + parts.unit;
        line.usual = key.form == SizeForm::Word     ? Said::text(key.words)
                     : key.usual && *key.usual != 0 ? tr("else %1").arg(numberText(*key.usual))
                                                    : QString();
        const auto found = given_.find(std::string(key.name));
        line.text = found == given_.end() ? QString() : found->second;
        list << QVariant::fromValue(line);
    }
    return list;
}

QVariantList TakeOffDesk::quantities() const {
    QVariantList list;
    if (!result_) {
        return list;
    }
    for (const auto& figure : result_->quantities) {
        const auto parts = partsOf(figure.key);
        TakenLine line;
        line.what = parts.name;
        line.exact = numberText(figure.value);
        line.unit = parts.unit == QLatin1String("ft") ? QStringLiteral("lin ft") : parts.unit;
        line.figure = line.exact + QLatin1Char(' ') + line.unit;
        list << QVariant::fromValue(line);
    }
    return list;
}

QVariantList TakeOffDesk::buy() const {
    QVariantList list;
    if (!result_) {
        return list;
    }
    for (const auto& purchase : result_->buy) {
        TakenLine line;
        line.what = Said::text(purchase.what);
        line.figure = numberText(purchase.bought) + QLatin1Char(' ') + Said::text(purchase.unit);
        line.why = tr("needs %1").arg(numberText(purchase.needed));
        list << QVariant::fromValue(line);
    }
    return list;
}

QStringList TakeOffDesk::assumed() const {
    QStringList list;
    if (!result_) {
        return list;
    }
    if (result_->wastePercent) {
        list << tr("waste %1\u00a0%").arg(numberText(*result_->wastePercent));
    }
    for (const auto& one : result_->assumed) {
        list << tr("%1: %2 (%3)")
                    .arg(Said::text(one.says), numberText(one.value), Said::text(one.source));
    }
    return list;
}

QString TakeOffDesk::source() const {
    return result_ ? Said::text(result_->source) : QString();
}

QString TakeOffDesk::caution() const {
    return result_ ? Said::text(result_->caution) : QString();
}

}  // namespace ledgerboard::desk

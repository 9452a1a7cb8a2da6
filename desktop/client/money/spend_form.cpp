#include "desktop/client/money/spend_form.h"

#include <algorithm>

#include "core/compute/bank_lines.h"
#include "core/intake/bank/match_line.h"
#include "core/intake/bank/payee_words.h"
#include "core/intake/photos/preview.h"
#include "core/model/value.h"
#include "core/store/photos.h"

#include "desktop/client/desk.h"
#include "desktop/client/money/bank_words.h"
#include "desktop/client/said.h"

namespace ledgerboard::desk {

using model::BankLine;
using model::Kind;
using model::Money;
using model::SpendKind;
namespace f = model::field;

namespace {

constexpr std::size_t kMostFits = 4;
constexpr int kOwnerSaidSo = 100;

template <class T>
T read(const Draft& draft, model::FieldCode field) {
    T member{};
    const auto found = draft.find(field);
    if (found != draft.end()) {
        model::readMember(found->second, member);
    }
    return member;
}

Money size(const BankLine& line) {
    const Money amount = line.amount.value_or(Money{});
    return amount < Money{} ? Money{} - amount : amount;
}

}  // namespace

SpendForm::SpendForm(QObject* parent) : RecordForm(parent) {
    connect(this, &RecordForm::opened, this, [this] {
        if (!isOpen()) {
            line_ = {};
        }
    });
}

const BankLine* SpendForm::lineOf(const model::RawId& id) const {
    for (const auto& line : now()->rows.bank_lines) {
        if (line.id.raw() == id) {
            return &line;
        }
    }
    return nullptr;
}

void SpendForm::beginFromLine(const QString& lineId) {
    const auto id = model::RawId::parse(lineId.toStdString());
    if (!id.ok() || now() == nullptr || lineOf(id.value()) == nullptr) {
        return;
    }
    const BankLine& line = *lineOf(id.value());
    const intake::BankMatcher matcher(now()->rows);
    const auto match = matcher.match(line);
    const model::Spend fresh =
        match.is == intake::LineIs::NewSpend ? match.fresh : matcher.spendFor(line);
    const auto& finder = namesIn(now());
    const auto name = [&finder](const model::RawId& record) {
        return record.isNil() ? QString() : Said::text(finder.nameOf(record));
    };
    beginNew(QStringLiteral("spend"),
             {{QStringLiteral("type"), Said::text(model::wordOf(fresh.type))},
              {QStringLiteral("spent_on"),
               fresh.spentOn ? Said::text(fresh.spentOn->toString()) : QString()},
              {QStringLiteral("payee"),
               fresh.payee.empty() ? BankWords::written(line) : Said::text(fresh.payee)},
              {QStringLiteral("amount"), Said::text(size(line).toString())},
              {QStringLiteral("item"), name(fresh.item.raw())},
              {QStringLiteral("contract"), name(fresh.contract.raw())},
              {QStringLiteral("crew"), name(fresh.crew.raw())},
              {QStringLiteral("pays"), name(fresh.pays.raw())}});
    line_ = line.id.raw();
    look();
}

void SpendForm::choose(int fit) {
    const auto all = fitting();
    if (fit < 0 || fit >= static_cast<int>(all.size())) {
        return;
    }
    const auto id = all[static_cast<std::size_t>(fit)].id;
    line_ = line_ == id ? model::RawId() : id;
    look();
}

std::vector<BankFit> SpendForm::fitting() const {
    std::vector<BankFit> fits;
    if (!isOpen() || !isNew() || now() == nullptr) {
        return fits;
    }
    const auto amount = read<std::optional<Money>>(draft(), f::Spend::amount);
    const auto payee = read<std::string>(draft(), f::Spend::payee);
    const compute::SettledLines settled(now()->rows);
    for (const auto& line : now()->rows.bank_lines) {
        const bool isSum = amount && *amount == size(line);
        const bool isPayee = !payee.empty() && intake::samePayee(payee, intake::writtenOn(line)) ==
                                                   intake::SamePayee::Yes;
        const bool isChosen = line.id.raw() == line_;
        if (!settled.isWaiting(line) || (!isSum && !isPayee && !isChosen)) {
            continue;
        }
        BankFit fit;
        fit.id = line.id.raw();
        fit.isChosen = isChosen;
        fit.words = line.postedOn ? tr("%1: %2").arg(Said::day(*line.postedOn, now()->today),
                                                     BankWords::written(line))
                                  : BankWords::written(line);
        fit.amount = Said::cents(line.amount.value_or(Money{}));
        fit.why = isSum && isPayee ? tr("the same sum and payee")
                  : isSum          ? tr("the same sum")
                  : isPayee        ? tr("the same payee, another sum")
                                   : tr("another sum");
        fits.push_back(std::move(fit));
    }
    std::stable_sort(fits.begin(), fits.end(),
                     [](const auto& a, const auto& b) { return a.isChosen > b.isChosen; });
    fits.resize(std::min(fits.size(), kMostFits));
    return fits;
}

QVariantList SpendForm::fits() const {
    QVariantList list;
    for (const auto& fit : fitting()) {
        list << QVariant::fromValue(fit);
    }
    return list;
}

QString SpendForm::picture() const {
    if (!isOpen() || isNew() || now() == nullptr) {
        return {};
    }
    model::Id<Kind::Photo> photo;
    model::readMember(valueIn(*now(), f::Spend::photo, record()), photo);
    for (const auto& one : now()->rows.photos) {
        if (one.id != photo) {
            continue;
        }
        const auto bytes = store::Photos(Desk::here()->bookPath()).read(one.digest);
        if (!bytes.ok()) {
            return {};
        }
        const auto preview = intake::previewOf(bytes.value());
        return preview.ok() ? QStringLiteral("data:image/jpeg;base64,%1")
                                  .arg(QString::fromLatin1(
                                      QByteArray::fromStdString(preview.value()).toBase64()))
                            : QString();
    }
    return {};
}

model::Result<void> SpendForm::complete(store::Action& action, const model::RawId& id,
                                        const Draft& draft) {
    if (kind() != Kind::Spend) {
        return {};
    }
    const auto type = read<SpendKind>(draft, f::Spend::type);
    const auto amount = read<std::optional<Money>>(draft, f::Spend::amount);
    const auto tax = read<std::optional<Money>>(draft, f::Spend::tax);
    if (type == SpendKind::Unset) {
        return Said::refusal(
            tr("Kind: say whether it is an invoice, a payment, a receipt, a fee or a refund"));
    }
    if (tax && tax > amount) {
        return Said::refusal(tr("Tax: it is more than the whole sum"));
    }
    const BankLine* line = line_.isNil() ? nullptr : lineOf(line_);
    if (line == nullptr) {
        return {};
    }
    if (amount != size(*line)) {
        return Said::refusal(tr(
            "The bank's line is of another sum: leave it out of this row, or put the sum right"));
    }
    model::RawId paid = id;
    if (type == SpendKind::Invoice) {
        model::Spend payment;
        payment.id = Desk::here()->book().newId<Kind::Spend>(Desk::here()->instant());
        payment.job = now()->rows.job.id;
        payment.type = SpendKind::Payment;
        payment.spentOn = line->postedOn;
        payment.amount = amount;
        payment.item = read<model::Id<Kind::Item>>(draft, f::Spend::item);
        payment.contract = read<model::Id<Kind::Contract>>(draft, f::Spend::contract);
        payment.crew = read<model::Id<Kind::Crew>>(draft, f::Spend::crew);
        payment.payee = read<std::string>(draft, f::Spend::payee);
        payment.pays = model::Id<Kind::Spend>(id);
        action.add(payment);
        paid = payment.id.raw();
    }
    action.set(paid, f::Spend::bankId, model::Value{line->bankId});
    action.set(line->id.raw(), f::BankLine::spend, paid);
    action.set(line->id.raw(), f::BankLine::why, model::Value{std::string("you said so")});
    action.set(line->id.raw(), f::BankLine::sure, model::valueOf(model::Percent::of(kOwnerSaidSo)));
    return {};
}

}  // namespace ledgerboard::desk

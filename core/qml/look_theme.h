// How does every screen get its colours, type, gaps and motion? The singleton Theme.
//
// Units: pixels, milliseconds. Threads: the UI's.
#pragma once

#include <QColor>
#include <QObject>
#include <QtQml/qqmlregistration.h>

#include "core/qml/look_tokens.h"

namespace ledgerboard::qml {

class Theme : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_SINGLETON

    Q_PROPERTY(Mode mode READ mode WRITE setMode NOTIFY changed)
    Q_PROPERTY(bool isSun READ isSun NOTIFY changed)
    Q_PROPERTY(int textPercent READ textPercent WRITE setTextPercent NOTIFY changed)
    Q_PROPERTY(bool leftHand READ leftHand WRITE setLeftHand NOTIFY changed)
    Q_PROPERTY(bool stillness READ stillness WRITE setStillness NOTIFY changed)

    Q_PROPERTY(QColor paper READ paper NOTIFY changed)
    Q_PROPERTY(QColor plaster READ plaster NOTIFY changed)
    Q_PROPERTY(QColor ink READ ink NOTIFY changed)
    Q_PROPERTY(QColor pencil READ pencil NOTIFY changed)
    Q_PROPERTY(QColor rule READ rule NOTIFY changed)
    Q_PROPERTY(QColor slate READ slate NOTIFY changed)
    Q_PROPERTY(QColor moss READ moss NOTIFY changed)
    Q_PROPERTY(QColor ochre READ ochre NOTIFY changed)
    Q_PROPERTY(QColor brick READ brick NOTIFY changed)
    Q_PROPERTY(QColor belt READ belt NOTIFY changed)
    Q_PROPERTY(QColor beltTool READ beltTool NOTIFY changed)
    Q_PROPERTY(QColor beltInk READ beltInk NOTIFY changed)

    Q_PROPERTY(int smallSize READ smallSize NOTIFY changed)
    Q_PROPERTY(int bodySize READ bodySize NOTIFY changed)
    Q_PROPERTY(int largeSize READ largeSize NOTIFY changed)
    Q_PROPERTY(int titleSize READ titleSize NOTIFY changed)
    Q_PROPERTY(int figureSize READ figureSize NOTIFY changed)
    Q_PROPERTY(QString words READ words CONSTANT)
    Q_PROPERTY(QString slab READ slab CONSTANT)

    Q_PROPERTY(int hairline READ hairline NOTIFY changed)
    Q_PROPERTY(int stroke READ stroke NOTIFY changed)
    Q_PROPERTY(int motionMs READ motionMs NOTIFY changed)
    Q_PROPERTY(int target READ target CONSTANT)
    Q_PROPERTY(int beltTarget READ beltTarget CONSTANT)
    Q_PROPERTY(int edge READ edge CONSTANT)

  public:
    // Do not renumber: stored in the settings of the device.
    enum Mode { Light = 0, Dark = 1, Sun = 2 };
    Q_ENUM(Mode)

    explicit Theme(QObject* parent = nullptr);

    // `steps` gaps of four pixels.
    Q_INVOKABLE [[nodiscard]] int gap(int steps) const { return steps * kGap; }

    [[nodiscard]] Mode mode() const { return mode_; }

    void setMode(Mode mode);

    [[nodiscard]] bool isSun() const { return mode_ == Sun; }

    // Size of type, 100 to 200.
    [[nodiscard]] int textPercent() const { return textPercent_; }

    void setTextPercent(int percent);

    [[nodiscard]] bool leftHand() const { return leftHand_; }

    void setLeftHand(bool left);

    // Nothing moves.
    [[nodiscard]] bool stillness() const { return stillness_; }

    void setStillness(bool still);

    [[nodiscard]] QColor paper() const { return colour(look().page.paper); }

    [[nodiscard]] QColor plaster() const { return colour(look().page.plaster); }

    [[nodiscard]] QColor ink() const { return colour(look().page.ink); }

    [[nodiscard]] QColor pencil() const { return colour(look().page.pencil); }

    [[nodiscard]] QColor rule() const { return colour(look().page.rule); }

    [[nodiscard]] QColor slate() const { return colour(look().page.slate); }

    [[nodiscard]] QColor moss() const { return colour(look().page.moss); }

    [[nodiscard]] QColor ochre() const { return colour(look().page.ochre); }

    [[nodiscard]] QColor brick() const { return colour(look().page.brick); }

    [[nodiscard]] QColor belt() const { return colour(look().belt); }

    [[nodiscard]] QColor beltTool() const { return colour(look().beltTool); }

    [[nodiscard]] QColor beltInk() const { return colour(look().beltInk); }

    [[nodiscard]] int smallSize() const { return typeSize(0); }

    [[nodiscard]] int bodySize() const { return typeSize(1); }

    [[nodiscard]] int largeSize() const { return typeSize(2); }

    [[nodiscard]] int titleSize() const { return typeSize(3); }

    [[nodiscard]] int figureSize() const { return typeSize(4); }

    [[nodiscard]] QString words() const { return words_; }

    [[nodiscard]] QString slab() const { return slab_; }

    [[nodiscard]] int hairline() const { return look().hairline; }

    [[nodiscard]] int stroke() const { return look().stroke; }

    [[nodiscard]] int motionMs() const { return stillness_ ? 0 : kMotionMs; }

    [[nodiscard]] int target() const { return kTarget; }

    [[nodiscard]] int beltTarget() const { return kBeltTarget; }

    // Margin at the sides of a page.
    [[nodiscard]] int edge() const { return 5 * kGap; }

  signals:
    void changed();

  private:
    [[nodiscard]] const LookTokens& look() const;
    [[nodiscard]] static QColor colour(std::string_view token);
    [[nodiscard]] int typeSize(std::size_t step) const;

    Mode mode_ = Light;
    int textPercent_ = 100;
    bool leftHand_ = false;
    bool stillness_ = false;
    QString words_;
    QString slab_;
};

}  // namespace ledgerboard::qml

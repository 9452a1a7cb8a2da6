// The lines of the week's page as the page lists them: plain values for QML.
#pragma once

#include <QColor>
#include <QObject>
#include <QString>
#include <QStringList>

namespace ledgerboard::desk {

// A figure of the page's head: what it is, how large, what is said beside it, how sure it is.
struct HeadLine {
    Q_GADGET
    Q_PROPERTY(QString name MEMBER name)
    Q_PROPERTY(QString figure MEMBER figure)
    Q_PROPERTY(QString strong MEMBER strong)
    Q_PROPERTY(QString rest MEMBER rest)
    Q_PROPERTY(QString spread MEMBER spread)

  public:
    QString name;
    QString figure;
    QString strong;  // stands before `rest`, in bold; either may be empty
    QString rest;
    QString spread;
};

// A line of a part of the page.
struct PageLine {
    Q_GADGET
    Q_PROPERTY(QString what MEMBER what)
    Q_PROPERTY(QString why MEMBER why)
    Q_PROPERTY(QString figure MEMBER figure)
    Q_PROPERTY(QString day MEMBER day)
    Q_PROPERTY(QString page MEMBER page)
    Q_PROPERTY(QString pageKey MEMBER pageKey)
    Q_PROPERTY(QString filter MEMBER filter)
    Q_PROPERTY(bool isPressing MEMBER isPressing)
    Q_PROPERTY(bool isBarred MEMBER isBarred)
    Q_PROPERTY(bool isTotal MEMBER isTotal)

  public:
    QString what;
    QString why;
    QString figure;
    QString day;
    QString page;     // name of the page where it is done
    QString pageKey;  // where that page is in the folder; else empty
    QString filter;   // what the page is to be filtered by; may be empty
    bool isPressing = false;
    bool isBarred = false;
    bool isTotal = false;
};

// Money of a trade; `cells` are budget now, committed, billed, held, paid, forecast and how it
// stands.
struct TradeLine {
    Q_GADGET
    Q_PROPERTY(QString trade MEMBER trade)
    Q_PROPERTY(QString filter MEMBER filter)
    Q_PROPERTY(QStringList cells MEMBER cells)
    Q_PROPERTY(bool isTotal MEMBER isTotal)

  public:
    QString trade;
    QString filter;  // what its lines are found by in the scope; empty where they cannot be
    QStringList cells;
    bool isTotal = false;
};

struct RoomLine {
    Q_GADGET
    Q_PROPERTY(QString name MEMBER name)
    Q_PROPERTY(QString filter MEMBER filter)
    Q_PROPERTY(QString shortName MEMBER shortName)
    Q_PROPERTY(QColor ground MEMBER ground)
    Q_PROPERTY(QColor ink MEMBER ink)
    Q_PROPERTY(double done MEMBER done)
    Q_PROPERTY(double plan MEMBER plan)
    Q_PROPERTY(bool hasWork MEMBER hasWork)
    Q_PROPERTY(bool finished MEMBER finished)
    Q_PROPERTY(QString doneText MEMBER doneText)
    Q_PROPERTY(QString planText MEMBER planText)
    Q_PROPERTY(QString over MEMBER over)

  public:
    QString name;
    QString filter;
    QString shortName;
    QColor ground;
    QColor ink;
    double done = 0;
    double plan = -1;
    bool hasWork = false;
    bool finished = false;
    QString doneText;
    QString planText;
    QString over;
};

struct WeekPictureLine {
    Q_GADGET
    Q_PROPERTY(QString caption MEMBER caption)
    Q_PROPERTY(QString source MEMBER source)

  public:
    QString caption;
    QString source;  // the picture itself, as a data address
};

}  // namespace ledgerboard::desk

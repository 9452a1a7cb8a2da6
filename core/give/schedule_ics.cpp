#include "core/give/schedule_ics.h"

#include <libical/ical.h>
#include <memory>

namespace ledgerboard::give {

namespace {

using compute::ScheduleDay;
using compute::ScheduleDayKind;

struct FreeComponent {
    void operator()(icalcomponent* component) const { icalcomponent_free(component); }
};

using Component = std::unique_ptr<icalcomponent, FreeComponent>;

icaltimetype dayOf(model::Date date) {
    icaltimetype time = icaltime_null_date();
    time.year = date.year();
    time.month = date.month();
    time.day = date.dayOfMonth();
    return time;
}

icaltimetype utcOf(model::Instant now) {
    return icaltime_from_timet_with_zone(static_cast<time_t>(now.milliseconds() / 1000), 0,
                                         icaltimezone_get_utc_timezone());
}

std::string summaryOf(const ScheduleDay& day) {
    switch (day.kind) {
        case ScheduleDayKind::Work:
            return day.what + (day.crew.empty() ? "" : " (" + day.crew + ")");
        case ScheduleDayKind::Delivery:
            return "Delivery: " + day.what;
        case ScheduleDayKind::OrderBy:
            return "Last day to order: " + day.what;
        case ScheduleDayKind::Inspection:
            return "Inspection: " + day.what;
        case ScheduleDayKind::Decision:
            return "Decide: " + day.what;
    }
    return day.what;
}

void add(icalcomponent* to, icalproperty* property) {
    icalcomponent_add_property(to, property);
}

icalcomponent* eventOf(const ScheduleDay& day, const std::string& place, model::Instant now) {
    icalcomponent* event = icalcomponent_new_vevent();
    const std::string kind(compute::wordsFor(day.kind));
    add(event, icalproperty_new_uid((day.record.toString() + "-" + kind).c_str()));
    add(event, icalproperty_new_dtstamp(utcOf(now)));
    add(event, icalproperty_new_lastmodified(utcOf(now)));
    add(event, icalproperty_new_dtstart(dayOf(day.from)));
    add(event, icalproperty_new_dtend(dayOf(day.to + 1)));  // the day after the last
    add(event, icalproperty_new_summary(summaryOf(day).c_str()));
    add(event, icalproperty_new_categories(kind.c_str()));
    add(event, icalproperty_new_location(place.c_str()));
    if (!day.note.empty()) {
        add(event, icalproperty_new_description(day.note.c_str()));
    }
    add(event, icalproperty_new_transp(ICAL_TRANSP_TRANSPARENT));
    return event;
}

// What RFC 7986 gives a whole calendar.
void addNames(icalcomponent* calendar, const CalendarName& called, model::Instant now) {
    add(calendar, icalproperty_new_name(called.name.c_str()));
    // Older calendar programs know the name by this.
    icalproperty* shown = icalproperty_new_x(called.name.c_str());
    icalproperty_set_x_name(shown, "X-WR-CALNAME");
    add(calendar, shown);
    const std::string holds =
        "Work, deliveries, last days to order, inspections and decisions at " + called.place +
        ", as planned on " + now.utcDate().toString() + ".";
    add(calendar, icalproperty_new_description(holds.c_str()));
    add(calendar, icalproperty_new_uid(called.id.c_str()));
    add(calendar, icalproperty_new_lastmodified(utcOf(now)));
    icaldurationtype aDay = icaldurationtype_null_duration();
    aDay.days = 1;
    icalproperty* interval = icalproperty_new_refreshinterval(aDay);
    // The standard has no default for its type: it has to be said.
    icalproperty_set_parameter(interval, icalparameter_new_value(ICAL_VALUE_DURATION));
    add(calendar, interval);
}

}  // namespace

model::Result<std::string> scheduleIcs(const compute::ScheduleDays& schedule,
                                       const CalendarName& called, model::Instant now) {
    const Component calendar(icalcomponent_new_vcalendar());
    add(calendar.get(), icalproperty_new_version("2.0"));
    add(calendar.get(), icalproperty_new_prodid("-//Ledgerboard//Ledgerboard//EN"));
    addNames(calendar.get(), called, now);
    for (const ScheduleDay& day : schedule.days) {
        icalcomponent_add_component(calendar.get(), eventOf(day, called.place, now));
    }
    const std::unique_ptr<char, decltype(&icalmemory_free_buffer)> text(
        icalcomponent_as_ical_string_r(calendar.get()), &icalmemory_free_buffer);
    if (text == nullptr) {
        return model::cannotBeMet("the calendar could not be written: memory ran out");
    }
    return std::string(text.get());
}

}  // namespace ledgerboard::give

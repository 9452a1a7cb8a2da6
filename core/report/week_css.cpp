#include "core/report/week_css.h"

#include "core/report/theme.h"

namespace ledgerboard::report {

namespace {

std::string tokens(const Theme& theme) {
    auto token = [](const char* name, std::string_view colour) {
        return std::string("--") + name + ":" + std::string(colour) + ";";
    };
    return token("paper", theme.paper) + token("plaster", theme.plaster) + token("ink", theme.ink) +
           token("pencil", theme.pencil) + token("rule", theme.rule) + token("slate", theme.slate) +
           token("moss", theme.moss) + token("ochre", theme.ochre) + token("brick", theme.brick);
}

constexpr const char* kScreen = R"(
*{box-sizing:border-box}
html{font-size:16px;-webkit-text-size-adjust:100%}
body{margin:0;background:var(--paper);color:var(--ink);
 font:400 1rem/1.375 Lato,"Gill Sans","Helvetica Neue",Arial,sans-serif;
 font-variant-numeric:lining-nums tabular-nums;overflow-wrap:anywhere}
main{max-width:1200px;margin:0 auto;padding:28px 36px 40px}
h1,h2,.figure{font-family:"Roboto Slab",Rockwell,Georgia,serif;font-weight:400;margin:0}
h1{font-size:1.75rem;line-height:1.2}
h2{font-size:1rem;line-height:1.5;padding-bottom:4px}
p{margin:0}
b,strong{font-weight:700}
.small,caption,th,.axis,figcaption,footer{font-size:.8125rem;line-height:1.35}
.small,.axis,figcaption,footer{color:var(--pencil)}
header{display:grid;grid-template-columns:1fr auto;column-gap:24px;align-items:end;
 margin-bottom:16px}
header .job{grid-column:1/-1;font-size:1.25rem;line-height:1.4;color:var(--ochre);
 font-family:"Roboto Slab",Rockwell,Georgia,serif}
header .when{color:var(--pencil);font-size:.8125rem;padding-bottom:4px}
svg{display:block;overflow:visible}
.scale{display:flex;justify-content:space-between;gap:12px;margin-top:4px}
.scale span:nth-child(2){text-align:center}
.figures{display:grid;grid-template-columns:repeat(auto-fit,minmax(230px,1fr));gap:16px 32px;
 margin:16px 0 0}
.figures div{min-width:0}
dl{margin:0}dt{font-size:.8125rem;color:var(--pencil)}dd{margin:0}
.figure{font-size:1.75rem;line-height:1.25}
.grid2{display:grid;grid-template-columns:minmax(0,1.75fr) minmax(0,1fr);gap:28px 36px;
 margin-top:28px}
.grid2.last{grid-template-columns:minmax(0,1fr) minmax(0,1.25fr)}
.stack{display:grid;grid-template-columns:minmax(0,1fr);gap:28px;align-content:start}
.said{margin-top:8px}
table{width:100%;border-collapse:collapse}
th,td{padding:6px 0 6px 12px;text-align:left;vertical-align:baseline;font-weight:400;
 border-top:1px solid var(--rule)}
th:first-child,td:first-child{padding-left:0}
thead th{color:var(--pencil);padding-top:0;padding-bottom:4px;border-top:0;vertical-align:bottom}
tbody th{font-size:1rem;line-height:1.375}
tbody tr:last-child>*,tfoot tr:last-child>*{border-bottom:1px solid var(--rule)}
.n{text-align:right;white-space:nowrap}
tfoot td,tfoot th{font-weight:700;font-size:1rem;border-top:2px solid var(--ink)}
td .small,th .small{display:block}
.scroll{overflow-x:auto}
.money td,.money th+th,.money th+td{padding-left:10px}
.chip{display:inline-block;min-width:32px;padding:3px 6px;border-radius:3px;text-align:center;
 font-weight:700;font-size:.8125rem;line-height:1.2;letter-spacing:.03em}
.rooms td,.rooms th{vertical-align:middle;padding-top:5px;padding-bottom:5px}
.room{min-width:6.5rem;display:flex;gap:8px;align-items:center}.room .chip{flex:none}
.rooms .drawn{width:24%;min-width:72px}
.rooms td,.rooms thead th{padding-left:10px}.rooms th:first-child{padding-left:0}
.rooms thead th{padding-top:0;vertical-align:bottom}
.money th:first-child{min-width:7rem}
ol,ul{list-style:none;margin:0;padding:0;border-bottom:1px solid var(--rule)}
li{border-top:1px solid var(--rule);padding:6px 0;display:flex;gap:12px;
 justify-content:space-between}
li .n{flex:none}
.page{color:var(--slate);font-size:.8125rem;flex:none;max-width:40%;text-align:right}
.barred{color:var(--brick);font-weight:700}
.pressing{font-weight:700}
.because{display:block}
.pencil{color:var(--pencil)}
.day{flex:none;width:5.75rem;color:var(--pencil)}
.what{flex:1;min-width:0}
.none{color:var(--pencil);border-top:1px solid var(--rule);padding-top:6px}
.photos{display:grid;grid-template-columns:repeat(3,minmax(0,1fr));gap:16px 40px;margin-top:28px}
.photos h2{grid-column:1/-1;padding:0}
figure{margin:0}
.photos img{display:block;width:100%;aspect-ratio:4/3;object-fit:cover;border-radius:2px;
 background:var(--plaster)}
figcaption{padding-top:4px}
footer{margin-top:28px;border-top:1px solid var(--rule);padding-top:8px}
.more{display:none}
.vial{fill:var(--vial);stroke:var(--pencil)}
.bubble{fill:var(--bubble);stroke:var(--moss)}
.glint{fill:#FFF;opacity:.7}
.hairline{stroke:var(--ink);stroke-width:2}
.tape .rule,.grid{stroke:var(--rule)}
.tick{stroke:var(--pencil)}
.blade{fill:var(--moss)}
.notch{fill:var(--ink);stroke:var(--paper);stroke-width:1;paint-order:stroke}
.curve{width:100%;height:auto}
.curve path{fill:none;stroke-width:2;stroke-linejoin:round;stroke-linecap:round}
.curve path.planned{stroke:var(--slate);stroke-dasharray:7 5}
.curve path.spent{stroke:var(--ink)}
.curve path.earned{stroke:var(--moss);stroke-width:3.25}
.curve text{font-family:inherit}
.axis{fill:var(--pencil);font-size:13px}
.halo{paint-order:stroke;stroke:var(--paper);stroke-width:4px}
.today{stroke:var(--pencil);stroke-dasharray:2 4;stroke-width:1.5}
.leader{stroke:var(--pencil);stroke-width:.75;stroke-dasharray:1 3}
.label{font-size:16px}
.label.planned,.end.planned{fill:var(--slate)}
.label.spent,.end.spent{fill:var(--ink)}
.label.earned,.end.earned{fill:var(--moss)}
.label.earned{font-weight:700}
@media (max-width:900px){
 main{padding:20px 16px 32px}
 .grid2,.grid2.last{grid-template-columns:minmax(0,1fr)}
 .curvebox{overflow-x:auto}.curve{min-width:560px}
 header{grid-template-columns:1fr}
}
@media (max-width:560px){.figures,.photos{grid-template-columns:1fr}
 .scale{flex-wrap:wrap}.scale span{white-space:nowrap}
 .scale span:nth-child(2){order:3;flex-basis:100%;white-space:normal;text-align:left}}
)";

constexpr const char* kPrint = R"(
@page{margin:11mm 12mm}
.answerspart{margin-top:28px}
@media print{
 :root{--paper:#FFF}
 html{font-size:11.4px}
 body{-webkit-print-color-adjust:exact;print-color-adjust:exact;line-height:1.3}
 main{max-width:none;padding:0;display:grid;grid-template-columns:repeat(6,minmax(0,1fr));
  gap:8px 22px}
 main>*{grid-column:1/-1;margin:0}
 .grid2{display:contents}
 .grid2>*{grid-column:span 3}
 .stack{gap:12px}
 .grid2>.curvepart{grid-column:span 4}.grid2>.curvepart+*{grid-column:span 2}
 .grid2>.moneypart,.grid2>.mondaypart{grid-column:1/-1}
 .answerspart{display:none}
 .mondaypart ol{columns:2;column-gap:22px;border-bottom:0}
 header{grid-template-columns:1fr auto}
 .figures{grid-template-columns:repeat(auto-fit,minmax(150px,1fr));gap:16px}
 .photos{grid-template-columns:repeat(3,minmax(0,1fr));gap:6px 22px}
 .curvebox,.scroll{overflow:visible}.curve{min-width:0}
 .axis{font-size:17px}.label{font-size:19px}
 th,td{padding-top:2px;padding-bottom:2px}
 .rooms td,.rooms th{padding-top:2px;padding-bottom:2px}
 li{padding:2px 0}
 section,tr,li,figure{break-inside:avoid}
 .moneypart{break-inside:auto}
 h2{break-after:avoid}
 .moved th,.moved .small,.what,.because,.room>span+span,figcaption{white-space:nowrap;
  overflow:hidden;text-overflow:ellipsis}
 .moved th{width:100%;max-width:0}
 .room{width:11rem}.room>span+span{min-width:0}
 .mondaypart .what{white-space:normal}
 .barred,.pressing,.calm{display:-webkit-box;-webkit-box-orient:vertical;-webkit-line-clamp:2;
  line-clamp:2;overflow:hidden}
 .beyond{display:none}
 .more{display:block}
 .photos img{max-height:36mm}
}
)";

}  // namespace

std::string weekCss() {
    const std::string light = tokens(kLight) + "--vial:#EEE9C4;--bubble:#D8E2A0;";
    const std::string dark = tokens(kDark) + "--vial:#3B3D2C;--bubble:#77854A;";
    return ":root{color-scheme:light dark;" + light +
           "}\n@media screen and (prefers-color-scheme:dark){:root{" + dark + "}}" + kScreen +
           kPrint;
}

}  // namespace ledgerboard::report

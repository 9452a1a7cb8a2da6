// Protects: the guard lets through only heads that it understood whole, and each connection counts
// for whom it should. What the HTTP library would make of the others is never found out.
#include <array>
#include <gtest/gtest.h>

#include "sync/guard/admissions.h"
#include "sync/guard/request_head.h"

namespace ledgerboard::sync {
namespace {

using model::RawId;

constexpr std::array<Route, 2> kRoutes = {{{"GET", "/1/time", 0}, {"POST", "/1/push", 1000}}};
constexpr std::array<std::string_view, 1> kKept = {"Ledgerboard-Nonce"};

HeadVerdict read(const std::string& text) {
    return readHead(text, {kRoutes, kKept});
}

std::string post(const std::string& headers) {
    return "POST /1/push HTTP/1.1\r\nHost: x\r\n" + headers + "\r\n";
}

TEST(RequestHead, GoesOnAsWrittenByUs) {
    const auto verdict =
        read(post("content-LENGTH:  17 \r\nledgerboard-nonce: 0aF9\r\n"
                  "Range: bytes=0-1,2-3\r\nAccept-Encoding: gzip\r\n"
                  "REMOTE_ADDR: 10.0.0.1\r\nLOCAL_ADDR: 10.0.0.2\r\n"
                  "Content-Type: multipart/form-data; boundary=x\r\n"));
    ASSERT_EQ(verdict.status, 0);
    EXPECT_EQ(verdict.head.bodyBytes, 17u);
    EXPECT_EQ(writeHead(verdict.head),
              "POST /1/push HTTP/1.1\r\nHost: ledgerboard-peer\r\n"
              "Content-Type: application/octet-stream\r\nContent-Length: 17\r\n"
              "Ledgerboard-Nonce: 0aF9\r\n\r\n");
    EXPECT_EQ(writeHead(read("GET /1/time HTTP/1.1\r\nHost: x\r\nConnection: Close\r\n\r\n").head),
              "GET /1/time HTTP/1.1\r\nHost: ledgerboard-peer\r\nConnection: close\r\n\r\n");
}

TEST(RequestHead, AnswersKnownCallsAlone) {
    EXPECT_EQ(read("GET /1/time HTTP/1.1\r\nHost: x\r\n\r\n").status, 0);
    EXPECT_EQ(read("GET /1/push HTTP/1.1\r\nHost: x\r\n\r\n").status, 405);
    EXPECT_EQ(read("DELETE /1/push HTTP/1.1\r\nHost: x\r\n\r\n").status, 405);
    for (const auto* path :
         {"/", "/1/time/", "/1/time?x=1", "/1/../1/time", "/1/tim%65", "/etc/passwd"}) {
        EXPECT_EQ(read("GET " + std::string(path) + " HTTP/1.1\r\nHost: x\r\n\r\n").status, 404)
            << path;
    }
}

TEST(RequestHead, WantsOnePlainLength) {
    EXPECT_EQ(read(post("")).status, 411);
    EXPECT_EQ(read(post("Transfer-Encoding: chunked\r\n")).status, 411);
    EXPECT_EQ(read(post("Content-Length: 5\r\nTransfer-Encoding: chunked\r\n")).status, 411);
    EXPECT_EQ(read(post("Transfer-Encoding: identity\r\nContent-Length: 5\r\n")).status, 411);
    EXPECT_EQ(read(post("Content-Length: 5\r\nContent-Length: 5\r\n")).status, 400);
    for (const auto* length : {"-2", "+5", "0x5", "5, 5", "5 5", "", "5.0", "\xc2\xb2"}) {
        EXPECT_EQ(read(post("Content-Length: " + std::string(length) + "\r\n")).status, 400)
            << length;
    }
    EXPECT_EQ(read(post("Content-Length: 1000\r\n")).status, 0);
    EXPECT_EQ(read(post("Content-Length: 1001\r\n")).status, 413);
    EXPECT_EQ(read(post("Content-Length: 99999999999999999999999\r\n")).status, 413);
    EXPECT_EQ(read("GET /1/time HTTP/1.1\r\nHost: x\r\nContent-Length: 1\r\n\r\n").status, 413);
    EXPECT_EQ(read(post("Content-Length: 5\r\nContent-Encoding: gzip\r\n")).status, 415);
    EXPECT_EQ(read(post("Content-Length: 5\r\nExpect: 100-continue\r\n")).status, 417);
}

TEST(RequestHead, RefusesWhatIsBent) {
    for (const std::string& head : {
             std::string(),
             std::string("\r\n"),
             std::string("GET /1/time HTTP/1.1\r\n"),
             std::string("GET /1/time HTTP/1.1\nHost: x\n\n"),
             std::string("GET  /1/time HTTP/1.1\r\nHost: x\r\n\r\n"),
             std::string("GET /1/time\r\nHost: x\r\n\r\n"),
             std::string("GET time HTTP/1.1\r\nHost: x\r\n\r\n"),
             std::string("G(T /1/time HTTP/1.1\r\nHost: x\r\n\r\n"),
             std::string("GET /1/time HTTP/1.1\r\n\r\n"),  // no Host
             std::string("GET /1/time HTTP/1.1\r\nHost: x\r\n\r\nmore"),
             std::string("GET /1/time HTTP/1.1\r\nHost: x\r\n folded\r\n\r\n"),
             std::string("GET /1/time HTTP/1.1\r\nHost : x\r\n\r\n"),
             std::string("GET /1/time HTTP/1.1\r\nno colon\r\n\r\n"),
             std::string("GET /1/time HTTP/1.1\r\nHost: \x01\r\n\r\n"),
             std::string("GET /1/time HTTP/1.1\r\nHost: x\0y\r\n\r\n", 35),
             post("Content-Length: 1\r\nLedgerboard-Nonce: %41\r\n"),
             post("Content-Length: 1\r\nLedgerboard-Nonce: a\r\nLedgerboard-Nonce: a\r\n"),
             post("Content-Length: 1\r\nLedgerboard-Nonce: " + std::string(300, 'a') + "\r\n"),
         }) {
        EXPECT_EQ(read(head).status, 400) << head;
    }
    EXPECT_EQ(read("GET /1/time HTTP/1.0\r\nHost: x\r\n\r\n").status, 505);
    EXPECT_EQ(read("GET /1/time HTTP/2.0\r\nHost: x\r\n\r\n").status, 505);
    std::string many;
    for (int k = 0; k < 70; ++k) {
        many += "X: y\r\n";
    }
    EXPECT_EQ(read(post(many)).status, 431);
}

const RawId kOne = RawId::parse("0196a0b1c2d37e4f8a5b6c7d8e9f0a1b").value();
const RawId kTwo = RawId::parse("0196a0b1c2d37e4f8a5b6c7d8e9f0a1c").value();

TEST(Admissions, HoldSoManyOfAnAddressAndInAll) {
    Admissions admissions({4, 2, 1, 1});
    const Ticket first = admissions.enter("a");
    EXPECT_EQ(first.admission, Admission::Served);
    EXPECT_EQ(admissions.enter("a").admission, Admission::Served);
    const Ticket away = admissions.enter("a");
    EXPECT_EQ(away.admission, Admission::TurnedAway);
    EXPECT_EQ(admissions.enter("a").admission, Admission::Dropped);
    EXPECT_EQ(admissions.enter("b").admission, Admission::Served);
    EXPECT_EQ(admissions.enter("c").admission, Admission::Served);
    EXPECT_EQ(admissions.enter("d").admission, Admission::Dropped);  // all four are taken
    admissions.leave(first);
    admissions.leave(away);
    EXPECT_EQ(admissions.enter("d").admission, Admission::Served);
    EXPECT_EQ(admissions.enter("d").admission, Admission::TurnedAway);
}

TEST(Admissions, CountAVerifiedDeviceForItself) {
    Admissions admissions({10, 1, 2, 1});
    Ticket first = admissions.enter("a");
    EXPECT_TRUE(admissions.claim(first, kOne));
    EXPECT_TRUE(admissions.claim(first, kOne));  // each request says so again
    Ticket second = admissions.enter("a");       // the address has room again
    EXPECT_EQ(second.admission, Admission::Served);
    EXPECT_TRUE(admissions.claim(second, kOne));
    Ticket third = admissions.enter("a");
    EXPECT_FALSE(admissions.claim(third, kOne));
    EXPECT_TRUE(admissions.claim(third, kTwo));
    EXPECT_TRUE(admissions.claim(second, kTwo));  // one connection, another caller
    admissions.leave(third);
    admissions.leave(second);
    admissions.leave(first);
    // All is as in the beginning.
    Ticket again = admissions.enter("a");
    EXPECT_EQ(again.admission, Admission::Served);
    EXPECT_EQ(admissions.enter("a").admission, Admission::TurnedAway);
    EXPECT_TRUE(admissions.claim(again, kOne));
}

TEST(Admissions, TakeANetworkOfIpv6ForOne) {
    EXPECT_EQ(addressGroup("192.0.2.7"), "192.0.2.7");
    EXPECT_EQ(addressGroup("::ffff:192.0.2.7"), "192.0.2.7");
    EXPECT_EQ(addressGroup("2001:db8:1:2:3:4:5:6"), addressGroup("2001:db8:1:2:ffff::1"));
    EXPECT_NE(addressGroup("2001:db8:1:2::1"), addressGroup("2001:db8:1:3::1"));
}

}  // namespace
}  // namespace ledgerboard::sync

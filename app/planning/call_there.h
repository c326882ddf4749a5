// Hands a piece of work from any thread to an object's own, where its event loop does it in the order handed over. All that was done
// before the hand-over is seen by the piece.
//
// Nothing is done once the object is gone; it has to be there while pieces are handed to it.
// Sanitizers: Qt keeps that order by a lock in its own code, which the thread sanitizer does not see; in such a build it is told of each
//             hand-over, so that only what Qt guarantees is taken as guaranteed.
#pragma once

#include <QMetaObject>
#include <QObject>
#include <utility>

#ifdef __SANITIZE_THREAD__
#include <sanitizer/tsan_interface.h>
#endif

namespace plugside {

template <typename Piece>
class HandedOver {
public:
    explicit HandedOver(Piece piece) : piece_(std::move(piece)) {}
    HandedOver(const HandedOver& other) : piece_(other.piece_) { told(); }
    HandedOver(HandedOver&& other) noexcept : piece_(std::move(other.piece_)) { told(); }
    HandedOver& operator=(const HandedOver&) = delete;
    HandedOver& operator=(HandedOver&&) = delete;
    ~HandedOver() { heard(); }
    void operator()() {
        heard();
        piece_();
        told();  // whoever lets go of the event last, the handing thread or the receiving one, does away with it
    }

private:
#ifdef __SANITIZE_THREAD__
    inline static char all_ = 0;  // stands for the lists of events
    // the last move is that into the event
    static void told() { __tsan_release(&all_); }
    static void heard() { __tsan_acquire(&all_); }
#else
    static void told() {}
    static void heard() {}
#endif

    Piece piece_;
};

template <typename Piece>
void call_there(QObject* there, Piece piece) {
    QMetaObject::invokeMethod(there, HandedOver<Piece>(std::move(piece)), Qt::QueuedConnection);
}

}  // namespace plugside

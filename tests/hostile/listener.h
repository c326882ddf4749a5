// A socket on the loopback that counts who connects: the proof that reading a file asks nobody for anything.
#pragma once

#include <arpa/inet.h>
#include <fcntl.h>
#include <netinet/in.h>
#include <sys/socket.h>
#include <unistd.h>

#include <stdexcept>
#include <string>
#include <vector>

namespace plugside::testing_support {

class Listener {
public:
    Listener() : socket_(::socket(AF_INET, SOCK_STREAM | SOCK_NONBLOCK, 0)) {
        sockaddr_in address{};
        address.sin_family = AF_INET;
        address.sin_addr.s_addr = htonl(INADDR_LOOPBACK);
        socklen_t size = sizeof address;
        auto* plain = reinterpret_cast<sockaddr*>(&address);
        if (socket_ < 0 || ::bind(socket_, plain, size) != 0 || ::listen(socket_, 16) != 0 ||
            ::getsockname(socket_, plain, &size) != 0)
            throw std::runtime_error("no socket on the loopback");
        address_ = address;
    }
    ~Listener() { ::close(socket_); }
    Listener(const Listener&) = delete;
    Listener& operator=(const Listener&) = delete;

    [[nodiscard]] std::string url() const { return "http://127.0.0.1:" + std::to_string(ntohs(address_.sin_port)); }

    // What those who connected since the last call asked for first, a line each: a browser's own calls home are told from a page's.
    std::vector<std::string> asked() {
        std::vector<std::string> lines;
        for (int one = ::accept(socket_, nullptr, nullptr); one >= 0; one = ::accept(socket_, nullptr, nullptr)) {
            char bytes[1024];
            const auto count = ::recv(one, bytes, sizeof bytes, MSG_DONTWAIT);
            const std::string text(bytes, count > 0 ? static_cast<std::size_t>(count) : 0U);
            lines.push_back(text.substr(0, text.find('\r')));
            ::close(one);
        }
        return lines;
    }

    // How many have connected since the last call.
    int connections() {
        int count = 0;
        for (int one = ::accept(socket_, nullptr, nullptr); one >= 0; one = ::accept(socket_, nullptr, nullptr), ++count)
            ::close(one);
        return count;
    }
    // Connects itself, to show that it would have noticed.
    bool notices_a_connection() {
        const int client = ::socket(AF_INET, SOCK_STREAM, 0);
        const bool connected = ::connect(client, reinterpret_cast<sockaddr*>(&address_), sizeof address_) == 0;
        ::close(client);
        return connected && connections() == 1;
    }

private:
    int socket_;
    sockaddr_in address_{};
};

}  // namespace plugside::testing_support

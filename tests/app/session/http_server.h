// A small HTTP server on the loopback, for tests: answers what the test says and writes down what it was asked.
#pragma once

#include <QTcpServer>
#include <QTcpSocket>
#include <functional>
#include <string>
#include <vector>

namespace plugside::testing_support {

class HttpServer {
public:
    struct Answer {
        int status = 200;
        QByteArray body;
        QByteArray more_headers;  // whole lines
        bool never = false;       // says nothing
    };
    std::function<Answer(const std::string& path)> answer;
    std::vector<std::string> asked;     // paths
    std::vector<std::string> requests;  // whole heads

    HttpServer() {
        server_.listen(QHostAddress::LocalHost);
        QObject::connect(&server_, &QTcpServer::newConnection, [this] {
            while (QTcpSocket* socket = server_.nextPendingConnection()) serve(socket);
        });
    }
    [[nodiscard]] std::string address() const { return "http://127.0.0.1:" + std::to_string(server_.serverPort()); }
    void close() { server_.close(); }

private:
    void serve(QTcpSocket* socket) {
        auto head = std::make_shared<QByteArray>();
        QObject::connect(socket, &QTcpSocket::readyRead, [this, socket, head] {
            *head += socket->readAll();
            for (qsizetype end = head->indexOf("\r\n\r\n"); end >= 0; end = head->indexOf("\r\n\r\n")) {
                const std::string request = head->left(end).toStdString();
                head->remove(0, end + 4);
                const std::size_t from = request.find(' ') + 1;
                const std::string path = request.substr(from, request.find(' ', from) - from);
                asked.push_back(path);
                requests.push_back(request);
                const Answer said = answer ? answer(path) : Answer{404, {}, {}, false};
                if (said.never) continue;
                socket->write("HTTP/1.1 " + QByteArray::number(said.status) + " X\r\nContent-Length: " +
                              QByteArray::number(said.body.size()) + "\r\n" + said.more_headers + "\r\n" + said.body);
            }
        });
        QObject::connect(socket, &QTcpSocket::disconnected, socket, &QObject::deleteLater);
    }
    QTcpServer server_;
};

}  // namespace plugside::testing_support
